package org.garboard.craft;

import java.util.Optional;

/**
 * A speed that the boat is used at.
 *
 * @param name drift, troll, cruise, top, or what the yard calls it
 * @param knots through the water, more than 0
 * @param share of her time under way, 0 to 1; empty where it is not told
 */
public record RunningSpeed(String name, double knots, Optional<Double> share) {
    public RunningSpeed {
        if (!(knots > 0 && Double.isFinite(knots))) {
            throw new IllegalArgumentException("speed \"" + name + "\" is " + knots + " knots; it must be more than 0");
        }
    }
}
