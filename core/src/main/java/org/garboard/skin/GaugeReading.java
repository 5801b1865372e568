package org.garboard.skin;

/**
 * Thickness of the skin as a gauge read it at one place.
 *
 * @param x aft of the origin [m]
 * @param y to starboard [m]
 * @param thickness [m]
 */
public record GaugeReading(double x, double y, double thickness) {
    public GaugeReading {
        if (!(thickness > 0 && thickness < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a gauge read " + thickness + " m; it must be more than 0");
        }
    }

    double from(double otherX, double otherY) {
        return Math.hypot(x - otherX, y - otherY);
    }
}
