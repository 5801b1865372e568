package org.garboard.acoustics.laminate;

/**
 * What a skin is made of, to sound: an even elastic solid that takes a little of it.
 *
 * @param name as people call it
 * @param density [kg/m3]
 * @param longitudinal speed of compression waves [m/s]
 * @param shear speed of shear waves [m/s], less than {@code longitudinal} by more than the root of 4/3
 * @param attenuationDbPerCmMHz of compression waves, in proportion to frequency [dB/cm/MHz], 0 or more
 */
public record Solid(String name, double density, double longitudinal, double shear, double attenuationDbPerCmMHz) {
    /** Decibels of one neper. */
    private static final double DB_PER_NEPER = 20 / Math.log(10);
    private static final double CM_PER_M = 100;
    private static final double HZ_PER_MHZ = 1e6;

    public Solid {
        Positive.require("density of " + name, density, "kg/m3");
        Positive.require("speed of compression waves in " + name, longitudinal, "m/s");
        Positive.require("speed of shear waves in " + name, shear, "m/s");
        if (!(attenuationDbPerCmMHz >= 0 && attenuationDbPerCmMHz < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("attenuation in " + name + " is " + attenuationDbPerCmMHz
                + " dB/cm/MHz; it must be 0 or more");
        }
        if (!(shear * shear < 0.75 * longitudinal * longitudinal)) {
            throw new IllegalArgumentException("in " + name + " shear waves run at " + shear + " m/s beside compression waves at "
                + longitudinal + " m/s; no solid that resists squeezing has them faster than 0.866 of that");
        }
    }

    /** The same without loss. */
    public Solid lossless() {
        return new Solid(name, density, longitudinal, shear, 0);
    }

    /** Characteristic impedance to compression waves, loss left out [Pa s/m]. */
    public double impedance() {
        return density * longitudinal;
    }

    /** What a compression wave loses [Np/m]. */
    double attenuation(double frequency) {
        return attenuationDbPerCmMHz * CM_PER_M * frequency / HZ_PER_MHZ / DB_PER_NEPER;
    }

    /**
     * What a shear wave loses [Np/m]. Our choice, because figures are seldom told: as much in a wavelength of
     * its own as a compression wave in one of its own.
     */
    double shearAttenuation(double frequency) {
        return attenuation(frequency) * longitudinal / shear;
    }
}
