package org.garboard.flow.attitude;

import org.garboard.hull.Hull;

/**
 * How far out one section is wet after another. The section stands as straight pieces between heights read at even
 * half-breadths; for those the integral of Wagner's condition is closed:
 * a bend of slope a at the half-breadth u asks (2/pi) a (sqrt(c^2 - u^2) - u acos(u / c)) of the water's height.
 *
 * @see "H. Wagner, Zeitschrift für angewandte Mathematik und Mechanik 12, 1932, water entry; from memory: the level
 *     water stands over the keel by (2/pi) times the integral of f(c sin t), t from 0 to pi/2, f the section's rise"
 */
final class WetOut {
    private static final int PIECES = 32;
    private static final int TURNS = 40;
    /** A step of Newton's so short [m] leaves an error of its square. */
    private static final double CLOSE = 1e-6;
    /** The outermost height is read so little inside the edge that it is the bottom's and not the side's. */
    private static final double INSIDE = 1e-9;

    private final Hull hull;
    private final double[] height = new double[PIECES + 1];
    private final double[] bend = new double[PIECES];
    private double step;
    private double edge;
    /** Of the last {@link #needed}: how fast it grows with the half-breadth. */
    private double growth;

    WetOut(Hull hull) {
        this.hull = hull;
    }

    /** Takes up the section at x, out to the edge of the bottom [m]. */
    WetOut at(double x, double toEdge) {
        edge = toEdge;
        step = toEdge * (1 - INSIDE) / PIECES;
        hull.heights(x, step, height, 0, PIECES + 1);
        double before = 0;
        for (int i = 0; i < PIECES; i++) {
            double slope = (height[i + 1] - height[i]) / step;
            bend[i] = slope - before;
            before = slope;
        }
        return this;
    }

    /** Height of level water over the keel at which the section is wet out to a half-breadth [m]. */
    double needed(double y) {
        double sum = 0;
        double rate = 0;
        for (int i = 0; i < PIECES && i * step < y; i++) {
            double u = i * step;
            double root = Math.sqrt(y * y - u * u);
            sum += bend[i] * (root - u * arcCosine(u / y));
            rate += bend[i] * root / y;
        }
        growth = 2 / Math.PI * rate;
        return 2 / Math.PI * sum;
    }

    /**
     * Of a number from 0 to 1, to 2.2e-8, in a tenth of the time of the exact one, which took most of that of a line.
     *
     * @see "M. Abramowitz, I. Stegun, Handbook of Mathematical Functions, 4.4.46, coefficients from memory; a test holds the error"
     */
    static double arcCosine(double x) {
        return Math.sqrt(1 - x) * (1.5707963050 + x * (-0.2145988016 + x * (0.0889789874 + x * (-0.0501743046
            + x * (0.0308918810 + x * (-0.0170881256 + x * (0.0066700901 - x * 0.0012624911)))))));
    }

    /**
     * Half-breadth to which water so high over the keel wets the section, at most to the edge [m].
     *
     * @param near where it is looked for first
     */
    double wetTo(double depth, double near) {
        double low = 0;
        double high = edge;
        double y = near > 0 && near < edge ? near : 0.5 * edge;
        for (int i = 0; i < TURNS; i++) {
            double miss = needed(y) - depth;
            if (miss > 0) {
                high = y;
            } else {
                low = y;
            }
            double next = growth > 0 ? y - miss / growth : Double.NaN;
            if (Math.abs(next - y) < CLOSE) {
                return next;
            }
            y = next > low && next < high ? next : 0.5 * (low + high);
        }
        return y;
    }
}
