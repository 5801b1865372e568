package org.garboard.flow.doublebody;

import java.util.Locale;

/**
 * A speed for a length: U / sqrt(g L).
 *
 * @param speed through the water [m/s], more than nothing
 * @param length of the waterline [m]
 */
public record Froude(double speed, double length) {
    /** Up to here the water's surface is near enough to level: guidance, no source. */
    public static final double LEVEL_WATER = 0.3;
    /** Standard gravity [m/s2]. */
    private static final double GRAVITY = 9.80665;
    /** No boat is faster [m/s]: our choice. */
    private static final double FASTEST = 100;

    public Froude {
        if (!(speed > 0 && speed <= FASTEST)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT,
                "a speed of %s m/s: it must be more than 0 and at most %.0f m/s", speed, FASTEST));
        }
        if (!(length > 0 && Double.isFinite(length))) {
            throw new IllegalArgumentException("a waterline of " + length + " m: it must be longer than 0");
        }
    }

    public double number() {
        return speed / Math.sqrt(GRAVITY * length);
    }

    /** Whether the double body may stand for the boat; past that it shows at best which way the water goes. */
    public boolean levelWater() {
        return number() <= LEVEL_WATER;
    }
}
