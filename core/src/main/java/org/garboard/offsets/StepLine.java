package org.garboard.offsets;

import java.util.List;

/**
 * The line of a step in plan, straight from point to point, square across beyond the last.
 *
 * @param station index of the station of its after face
 * @param points from the keel outward; two at one place are the two corners of a notch
 */
public record StepLine(int station, List<EndPoint> points) {
    public StepLine {
        points = List.copyOf(points);
    }
}
