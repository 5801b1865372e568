package org.garboard.siting;

import java.util.List;

/**
 * A part of the bottom on which every check of a mount that can be made is met.
 *
 * @param outline closed ring in plan, counter-clockwise seen from above, last point not repeated
 * @param area in plan [m2]
 * @param holes closed rings of places inside the outline where a check is not met
 */
public record Region(List<PlanPoint> outline, List<List<PlanPoint>> holes, double area) {
    public Region {
        outline = List.copyOf(outline);
        holes = holes.stream().map(List::copyOf).toList();
    }
}
