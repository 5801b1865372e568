package org.garboard.flow.water;

/** Speed of sound in water. */
public final class SoundSpeed {
    private static final double[][] C = {
        {1402.388, 5.03711, -5.80852e-2, 3.3420e-4, -1.47800e-6, 3.1464e-9},
        {0.153563, 6.8982e-4, -8.1788e-6, 1.3621e-7, -6.1185e-10},
        {3.1260e-5, -1.7107e-6, 2.5974e-8, -2.5335e-10, 1.0405e-12},
        {-9.7729e-9, 3.8504e-10, -2.3643e-12}};
    private static final double[][] A = {
        {1.389, -1.262e-2, 7.164e-5, 2.006e-6, -3.21e-8},
        {9.4742e-5, -1.2580e-5, -6.4885e-8, 1.0507e-8, -2.0122e-10},
        {-3.9064e-7, 9.1041e-9, -1.6002e-10, 7.988e-12},
        {1.100e-10, 6.649e-12, -3.389e-13}};
    private static final double[][] B = {{-1.922e-2, -4.42e-5}, {7.3637e-5, 1.7945e-7}};
    private static final double[][] D = {{1.727e-3}, {-7.9836e-6}};

    private SoundSpeed() {
    }

    /**
     * Speed of sound in fresh or sea water [m/s].
     *
     * @param t temperature [degrees Celsius], 0 to 40
     * @param s salinity, 0 to 40, taken on to the 42 to which the density holds
     * @param bar pressure above that of the atmosphere [bar], 0 to 1000
     * @see "C. T. Chen, F. J. Millero 1977 as N. P. Fofonoff, R. C. Millard give it, UNESCO Technical Papers in
     *     Marine Science 44, 1983. The coefficients of pressure are from memory; the paper's check value, which
     *     uses every one of them, comes out to its last digit"
     * @throws IllegalArgumentException outside the ranges
     */
    public static double chenMillero(double t, double s, double bar) {
        if (!(t >= 0 && t <= Water.MOST_CELSIUS && s >= 0 && s <= Water.MOST_SALINITY && bar >= 0 && bar <= 1000)) {
            throw new IllegalArgumentException("sound speed after Chen and Millero: " + t + " degrees Celsius, salinity " + s
                + ", " + bar + " bar; it holds from 0 to 40 degrees, salinity 0 to 42, 0 to 1000 bar");
        }
        return of(C, t, bar) + s * (of(A, t, bar) + Math.sqrt(s) * of(B, t, bar) + s * of(D, t, bar));
    }

    private static double of(double[][] rows, double t, double bar) {
        double sum = 0;
        for (int i = rows.length - 1; i >= 0; i--) {
            double row = 0;
            for (int j = rows[i].length - 1; j >= 0; j--) {
                row = row * t + rows[i][j];
            }
            sum = sum * bar + row;
        }
        return sum;
    }

    /**
     * Speed of sound in sea water [m/s]: a second formula, quicker, not for fresh water.
     *
     * @param t temperature [degrees Celsius], 2 to 30
     * @param s salinity, 25 to 40
     * @param depth [m], 0 to 8000
     * @see "K. V. Mackenzie, Nine-term equation for sound speed in the oceans, JASA 70(3), 1981, pp. 807-812; as
     *     other texts quote it"
     * @throws IllegalArgumentException outside the ranges
     */
    public static double mackenzie(double t, double s, double depth) {
        if (!(t >= 2 && t <= 30 && s >= 25 && s <= 40 && depth >= 0 && depth <= 8000)) {
            throw new IllegalArgumentException("nine-term equation of sound speed: " + t + " degrees Celsius, salinity " + s
                + ", depth " + depth + " m; it holds from 2 to 30 degrees, salinity 25 to 40, 0 to 8000 m");
        }
        double d = s - 35;
        return 1448.96 + 4.591 * t - 5.304e-2 * t * t + 2.374e-4 * t * t * t + 1.340 * d + 1.630e-2 * depth
            + 1.675e-7 * depth * depth - 1.025e-2 * t * d - 7.139e-13 * t * depth * depth * depth;
    }
}
