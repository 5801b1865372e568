package org.garboard.acoustics.laminate;

import org.garboard.flow.water.Water;

/**
 * A fluid that sound runs in without loss.
 *
 * @param density [kg/m3]
 * @param speed of sound [m/s]
 */
public record Fluid(double density, double speed) {
    public Fluid {
        Positive.require("density of a fluid", density, "kg/m3");
        Positive.require("speed of sound in a fluid", speed, "m/s");
    }

    public static Fluid of(Water water) {
        return new Fluid(water.density(), water.soundSpeed());
    }

    /** Characteristic impedance [Pa s/m]. */
    public double impedance() {
        return density * speed;
    }
}
