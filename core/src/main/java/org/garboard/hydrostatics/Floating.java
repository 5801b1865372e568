package org.garboard.hydrostatics;

/** How a hull lies to a surface of the water. */
public sealed interface Floating permits Hydrostatics, Floating.ClearOfWater, Floating.Swamped {

    /**
     * No part of the skin is in the water.
     *
     * @param lowest how far the lowest place of the keel stands above the water [m]
     */
    record ClearOfWater(double lowest) implements Floating {
    }

    /**
     * The water comes over the sheer, where the skin ends and there is nothing to close it.
     *
     * @param x where it stands highest above the sheer [m]
     * @param depth how high [m]
     */
    record Swamped(double x, double depth) implements Floating {
    }
}
