package org.garboard.craft;

import java.util.List;
import org.garboard.geometry.Quad;

/**
 * A feature laid on a hull.
 *
 * @param kind "lifting strake", "intake"
 * @param cover what it covers in plan, hull frame [m], drawn to starboard whatever its side; from end to end
 */
public record LaidFeature(String name, String kind, Sides sides, List<Quad> cover) {
    public LaidFeature {
        cover = List.copyOf(cover);
    }
}
