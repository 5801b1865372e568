package org.garboard.offsets;

import java.util.List;

/**
 * The profile of a stem forward of the first station: where lines of the hull end on it.
 *
 * @param points x at named lines or at heights, from the keel upward
 * @param halfSiding half the stem's thickness where the skin ends on it [m]; 0 if the sides meet
 */
public record StemLine(List<EndPoint> points, double halfSiding) {
    public StemLine {
        points = List.copyOf(points);
    }
}
