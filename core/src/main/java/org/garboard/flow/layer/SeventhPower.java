package org.garboard.flow.layer;

import org.garboard.flow.water.Water;

/**
 * The quick law: a turbulent layer whose velocity goes with the seventh root of the height.
 *
 * @see "F. M. White, Fluid Mechanics, ch. 7: thickness 0.16 x Re^-1/7, displacement 1/8 and momentum 7/72 of
 *     it, local friction 0.027 Re^-1/7; from memory, two worked examples reproduced"
 */
public final class SeventhPower {
    /** Reynolds numbers of the run for which the law serves; above, it has not been compared with anything. */
    public static final double LEAST_REYNOLDS = 1e6;
    public static final double MOST_REYNOLDS = 1e9;

    private SeventhPower() {
    }

    /** u/U = (y/delta)^(1/7). */
    public record Profile() implements Layer.Profile {
        @Override
        public double velocity(double height) {
            return height >= 1 ? 1 : Math.pow(Math.max(0, height), 1 / 7.0);
        }

        @Override
        public double height(double velocity) {
            return Math.pow(velocity, 7);
        }
    }

    /** Thickness over run. */
    static double thickness(double reynolds) {
        return 0.16 * Math.pow(reynolds, -1 / 7.0);
    }

    /** Mean friction of one side of a plate. */
    static double drag(double reynolds) {
        return 0.031 * Math.pow(reynolds, -1 / 7.0);
    }

    /**
     * The layer after a run [m] at a speed [m/s].
     *
     * @throws IllegalArgumentException if the Reynolds number is not within the law's range; {@link LayerLaw} asks first
     */
    static Layer after(double run, double speed, Water water) {
        double reynolds = run * speed / water.viscosity();
        if (!(reynolds >= LEAST_REYNOLDS && reynolds <= MOST_REYNOLDS)) {
            throw new IllegalArgumentException("1/7-power layer: Reynolds number " + reynolds + "; it must be from 1e6 to 1e9");
        }
        double delta = run * thickness(reynolds);
        return new Layer(run, speed, delta, delta / 8, 7 * delta / 72, 0.027 * Math.pow(reynolds, -1 / 7.0), new Profile());
    }
}
