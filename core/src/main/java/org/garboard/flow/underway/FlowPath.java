package org.garboard.flow.underway;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * The way of the water over the bottom to starboard, from where it first meets the skin.
 *
 * @param points in plan, hull frame [m], at least two
 * @param runs how far it has come at each of them along the skin [m], rising from 0
 */
public record FlowPath(List<Vector2D> points, List<Double> runs) {
    public FlowPath {
        points = List.copyOf(points);
        runs = List.copyOf(runs);
        if (points.size() < 2 || runs.size() != points.size()) {
            throw new IllegalArgumentException("a path of " + points.size() + " place(s) and " + runs.size() + " run(s); two are the least");
        }
    }

    /** All of it [m]. */
    public double length() {
        return runs.get(runs.size() - 1);
    }

    /** Where the water is after a run [m]; empty past the end. */
    public Optional<Vector2D> after(double run) {
        for (int i = 1; i < points.size(); i++) {
            if (run >= runs.get(i - 1) && run <= runs.get(i) && runs.get(i) > runs.get(i - 1)) {
                return Optional.of(points.get(i - 1).lerp(points.get(i), (run - runs.get(i - 1)) / (runs.get(i) - runs.get(i - 1))));
            }
        }
        return Optional.empty();
    }
}
