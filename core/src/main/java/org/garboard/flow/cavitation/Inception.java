package org.garboard.flow.cavitation;

import org.garboard.flow.water.Water;

/**
 * When water boils at a place under water at rest.
 *
 * @param water its temperature and salinity
 * @param depth below the surface [m], 0 or more
 */
public record Inception(Water water, double depth) {
    private static final double DEEPEST = 100;

    public Inception {
        if (!(depth >= 0 && depth <= DEEPEST)) {
            throw new IllegalArgumentException("depth below the surface is " + depth + " m; it must be from 0 to 100 m");
        }
    }

    /** Pressure of the still water over that of its vapour [Pa]. */
    private double margin() {
        return Water.ATMOSPHERE + water.density() * Water.GRAVITY * depth - water.vapourPressure();
    }

    /** Cavitation number at a speed [m/s]: margin over stagnation pressure. */
    public double number(double speed) {
        return margin() / (0.5 * water.density() * speed * speed);
    }

    /** Speed of the water at which a pressure coefficient, below 0, brings it to boil [m/s]. */
    public double speed(double leastPressure) {
        if (!(leastPressure < 0)) {
            throw new IllegalArgumentException("least pressure coefficient is " + leastPressure + "; it must be below 0");
        }
        return Math.sqrt(margin() / (0.5 * water.density() * -leastPressure));
    }
}
