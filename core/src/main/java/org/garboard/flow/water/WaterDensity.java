package org.garboard.flow.water;

/** The international equation of state of sea water at the pressure of the atmosphere. */
final class WaterDensity {

    private WaterDensity() {
    }

    /**
     * Density [kg/m3].
     *
     * @param t temperature [degrees Celsius], 0 to 40
     * @param s salinity, 0 to 42
     * @see "EOS-80: Algorithms for computation of fundamental properties of seawater, UNESCO Technical Papers
     *     in Marine Science 44, 1983; t there is on IPTS-68"
     */
    static double eos80(double t, double s) {
        double pure = 999.842594 + t * (6.793952e-2 + t * (-9.095290e-3 + t * (1.001685e-4
            + t * (-1.120083e-6 + t * 6.536332e-9))));
        double a = 8.24493e-1 + t * (-4.0899e-3 + t * (7.6438e-5 + t * (-8.2467e-7 + t * 5.3875e-9)));
        double b = -5.72466e-3 + t * (1.0227e-4 - t * 1.6546e-6);
        return pure + a * s + b * s * Math.sqrt(s) + 4.8314e-4 * s * s;
    }
}
