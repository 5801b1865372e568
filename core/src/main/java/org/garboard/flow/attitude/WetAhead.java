package org.garboard.flow.attitude;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.geometry.Ring;
import org.garboard.hull.Hull;

/** The part of a bottom in solid water, between the stagnation line and where the bottom ends, to starboard. */
final class WetAhead {
    private static final int PIECES = 20;

    private WetAhead() {
    }

    /** @param end x of its after end [m] */
    static PlanRegion of(Hull hull, StagnationLine line, double end) {
        List<Vector2D> outline = new ArrayList<>(line.points());
        double from = line.aftermost();
        for (int i = 1; i <= PIECES && from < end; i++) {
            double x = from + (end - from) * i / PIECES;
            outline.add(Vector2D.of(x, hull.bottomEdge().y(x)));
        }
        outline.add(Vector2D.of(end, 0));
        return new PlanRegion(new Ring(outline), List.of());
    }
}
