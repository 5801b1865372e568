package org.garboard.craft;

import org.garboard.hull.Hull;

/**
 * What the boat weighs, ready to go, and where her centre of gravity is.
 *
 * @param light with the least of crew, fuel and stores that she is used with [kg]
 * @param full with the most; at least {@code light} [kg]
 * @param datum where {@code along} is measured from
 * @param along to the centre of gravity, level [m]
 * @param vcg the centre of gravity above base [m]
 */
public record Weights(double light, double full, FeaturePlace.Datum datum, double along, double vcg) {
    public Weights {
        if (!(light > 0 && full >= light && Double.isFinite(full + along + vcg))) {
            throw new IllegalArgumentException("a boat of " + light + " kg light and " + full
                + " kg full; the first must be more than 0, the second not less than the first");
        }
    }

    /** The centre of gravity aft of the origin [m]. */
    public double x(Hull hull) {
        return datum == FeaturePlace.Datum.AFT_OF_ORIGIN ? along : hull.foot() - along;
    }
}
