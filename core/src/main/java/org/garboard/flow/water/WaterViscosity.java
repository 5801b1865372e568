package org.garboard.flow.water;

/** Viscosity of water and sea water. */
final class WaterViscosity {

    private WaterViscosity() {
    }

    /**
     * Dynamic viscosity [Pa s], within 1.5 %.
     *
     * @param t temperature [degrees Celsius]
     * @param salinity grams to the kilogram
     * @see "M. H. Sharqawy, J. H. Lienhard, S. M. Zubair, Thermophysical properties of seawater, Desalination
     *     and Water Treatment 16, 2010, the basis of ITTC 7.5-02-01-03. The line for pure water was read; what
     *     salt adds is from memory"
     */
    static double dynamic(double t, double salinity) {
        double s = salinity / 1000;
        double pure = 4.2844e-5 + 1 / (0.157 * (t + 64.993) * (t + 64.993) - 91.296);
        double a = 1.541 + t * (1.998e-2 - t * 9.52e-5);
        double b = 7.974 + t * (-7.561e-2 + t * 4.724e-4);
        return pure * (1 + s * (a + b * s));
    }
}
