package org.garboard.flow.water;

/** Pressure below which water boils. */
final class VapourPressure {
    private static final double CRITICAL_KELVIN = 647.096;
    private static final double CRITICAL_PASCAL = 22.064e6;
    private static final double ZERO_CELSIUS = 273.15;

    private VapourPressure() {
    }

    /**
     * Saturation pressure of pure water [Pa], from the triple point to the critical point.
     *
     * @param kelvin temperature [K]
     * @see "W. Wagner, A. Pruss, J. Phys. Chem. Ref. Data 22(3), 1993, the saturation line; from memory"
     */
    static double pure(double kelvin) {
        double v = 1 - kelvin / CRITICAL_KELVIN;
        double root = Math.sqrt(v);
        double sum = -7.85951783 * v + 1.84408259 * v * root - 11.7866497 * v * v * v
            + 22.6807411 * v * v * v * root - 15.9618719 * v * v * v * v + 1.80122502 * Math.pow(v, 7.5);
        return CRITICAL_PASCAL * Math.exp(CRITICAL_KELVIN / kelvin * sum);
    }

    /**
     * Over sea water [Pa]: salt takes a little of it away (Raoult's law).
     *
     * @see "the factor of salt as in Sharqawy, Lienhard, Zubair 2010; from memory"
     */
    static double over(double celsius, double salinity) {
        return pure(celsius + ZERO_CELSIUS) / (1 + 0.57357 * salinity / (1000 - salinity));
    }
}
