package org.garboard.flow.planing;

import org.garboard.flow.water.Water;

/**
 * The water that meets the bottom.
 *
 * @param speed of the boat [m/s]
 * @param density [kg/m3]
 * @param viscosity kinematic [m2/s]
 * @param gravity [m/s2]
 */
public record Stream(double speed, double density, double viscosity, double gravity) {
    public Stream {
        if (!(speed > 0 && speed < 200)) {
            throw new IllegalArgumentException("speed is " + speed + " m/s; it must be more than 0 and less than 200 m/s");
        }
        if (!(density > 0 && viscosity > 0 && gravity > 0)) {
            throw new IllegalArgumentException("density " + density + ", viscosity " + viscosity + ", gravity " + gravity
                + "; each must be more than 0");
        }
    }

    public static Stream of(Water water, double speed) {
        return new Stream(speed, water.density(), water.viscosity(), Water.GRAVITY);
    }

    /** Stagnation pressure [Pa]. */
    double pressure() {
        return 0.5 * density * speed * speed;
    }
}
