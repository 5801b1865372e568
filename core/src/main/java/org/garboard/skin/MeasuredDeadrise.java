package org.garboard.skin;

import java.util.Optional;
import org.garboard.units.Angle;

/**
 * Deadrise as measured on the boat at a place, on both of her sides.
 *
 * @param x aft of the origin [m]
 * @param halfBreadth out from the centreline, on either side [m]
 * @param starboard as read there; none where that side was not measured
 * @param port likewise
 */
public record MeasuredDeadrise(double x, double halfBreadth, Optional<Angle> starboard, Optional<Angle> port) {
    double from(double otherX, double y) {
        return Math.hypot(x - otherX, halfBreadth - Math.abs(y));
    }
}
