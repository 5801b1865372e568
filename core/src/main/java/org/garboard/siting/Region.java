package org.garboard.siting;

import java.util.ArrayList;
import java.util.List;
import org.garboard.craft.Sides;

/**
 * A part of the bottom on which every check of a mount that can be made is met.
 *
 * @param outline closed ring in plan, counter-clockwise seen from above, last point not repeated
 * @param area in plan [m2]
 * @param holes closed rings of places inside the outline where a check is not met
 * @param sides where it is: on one side as drawn; BOTH for a region drawn to starboard that port mirrors, or one across the keel
 */
public record Region(List<PlanPoint> outline, List<List<PlanPoint>> holes, double area, Sides sides) {

    /** Alike on both sides. */
    public Region(List<PlanPoint> outline, List<List<PlanPoint>> holes, double area) {
        this(outline, holes, area, Sides.BOTH);
    }

    public Region {
        outline = List.copyOf(outline);
        holes = holes.stream().map(List::copyOf).toList();
    }

    /** Whether a place in plan lies within the outline: a line from it outboard crosses it an odd number of times. */
    public boolean surrounds(double x, double y) {
        boolean within = false;
        for (int i = 0; i < outline.size(); i++) {
            PlanPoint one = outline.get(i);
            PlanPoint other = outline.get((i + 1) % outline.size());
            if (one.x() > x != other.x() > x) {
                double at = one.y() + (other.y() - one.y()) * (x - one.x()) / (other.x() - one.x());
                within ^= at > y;
            }
        }
        return within;
    }

    /** Whether a place lies in it: of a region that is alike on both sides, to port too. */
    public boolean holds(double x, double y) {
        return surrounds(x, y) || sides == Sides.BOTH && surrounds(x, -y);
    }

    /** The same, drawn to starboard, on the side where it is. */
    Region on(Sides side) {
        return new Region(side == Sides.PORT ? mirrored(outline) : outline,
            side == Sides.PORT ? holes.stream().map(Region::mirrored).toList() : holes, area, side);
    }

    private static List<PlanPoint> mirrored(List<PlanPoint> ring) {
        List<PlanPoint> mirrored = new ArrayList<>();
        for (int i = ring.size() - 1; i >= 0; i--) {
            mirrored.add(new PlanPoint(ring.get(i).x(), -ring.get(i).y()));
        }
        return mirrored;
    }
}
