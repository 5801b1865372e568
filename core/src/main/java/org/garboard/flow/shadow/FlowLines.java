package org.garboard.flow.shadow;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/** Where the water of a place of the bottom goes, seen in plan. */
public interface FlowLines {

    /** A line, or why there is none. */
    sealed interface Found permits Line, OffTheBottom {
    }

    /**
     * @param points in plan from the place aft, at least one
     * @param lost why they end before the water leaves the bottom; empty where they do not
     */
    record Line(List<Vector2D> points, Optional<String> lost) implements Found {
        public Line {
            points = List.copyOf(points);
        }

        /** To where the water leaves the bottom. */
        public Line(List<Vector2D> points) {
            this(points, Optional.empty());
        }
    }

    /** No water of the bottom is there. */
    record OffTheBottom(String reason) implements Found {
    }

    /** @param y to starboard [m] */
    Found downFrom(double x, double y);
}
