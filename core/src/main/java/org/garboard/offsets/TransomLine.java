package org.garboard.offsets;

import java.util.List;

/**
 * The outline of a transom: where its lines end.
 *
 * @param points x at named lines or at heights, from the keel upward
 * @param round how far its middle stands abaft of its sides in plan, at its broadest [m]; 0 if it is flat
 */
public record TransomLine(List<EndPoint> points, double round) {
    public TransomLine {
        points = List.copyOf(points);
    }
}
