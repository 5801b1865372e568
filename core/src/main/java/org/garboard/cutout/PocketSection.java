package org.garboard.cutout;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * The pocket cut by a plane square to the floor, for drawing. Hull frame [m].
 *
 * @param name "A", "B", …; "LONG" for the section on the centreline
 * @param along distance of the plane aft of the site along the floor [m]; 0 for the long section
 * @param skin the outside of the skin in that plane, beyond the opening too, port to starboard or forward to aft
 * @param cut the finished surface of pocket and ramps from skin to skin, same order; empty where the plane misses it
 */
public record PocketSection(String name, double along, List<Vector3D> skin, List<Vector3D> cut) {
    public PocketSection {
        skin = List.copyOf(skin);
        cut = List.copyOf(cut);
    }
}
