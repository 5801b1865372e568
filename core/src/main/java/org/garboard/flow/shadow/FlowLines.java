package org.garboard.flow.shadow;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Where the water of a place of the bottom goes, seen in plan. */
public interface FlowLines {

    /** A line, or why there is none. */
    sealed interface Found permits Line, OffTheBottom {
    }

    /** @param points in plan from the place aft, at least one */
    record Line(List<Vector2D> points) implements Found {
        public Line {
            points = List.copyOf(points);
        }
    }

    /** No water of the bottom is there. */
    record OffTheBottom(String reason) implements Found {
    }

    /** @param y to starboard [m] */
    Found downFrom(double x, double y);
}
