package org.garboard.geometry;

/**
 * The places at which cubic splines are to take given values, with the system that finds their poles
 * factored once for all of them.
 *
 * <p>Band elimination without pivoting: the collocation matrix is totally positive (de Boor 1978).
 */
public final class SplineSites {
    /** Entries of a row on either side of the diagonal: its site lies under the pole's own function. */
    private static final int BAND = KnotVector.DEGREE;
    private static final int ROW = 2 * BAND + 1;

    private final double[] sites;
    private final KnotVector knots;
    private final double[] at;
    /** Lower factor left of the diagonal, upper on it and right of it. */
    private final double[] rows;

    /**
     * Splines that are not-a-knot at their ends; the polynomial of least degree through two or three values.
     *
     * @param sites at least two, strictly rising
     */
    public SplineSites(double... sites) {
        this(KnotVector.notAKnot(sites), sites);
    }

    /**
     * The same splines written over a longer stretch: beyond the outermost sites the end's cubic goes on.
     *
     * @param start no more than the first site
     * @param end no less than the last
     * @param sites at least two, strictly rising
     */
    public static SplineSites over(double start, double end, double... sites) {
        return new SplineSites(KnotVector.notAKnot(sites).reaching(start, end), sites);
    }

    /** Splines over given knots, by their values where each function's pole sits (Greville). */
    public static SplineSites ofKnots(KnotVector knots) {
        return new SplineSites(knots, greville(knots));
    }

    private SplineSites(KnotVector knots, double[] sites) {
        this.sites = sites.clone();
        this.knots = knots;
        this.at = sites.length < knots.size() ? greville(knots) : this.sites;
        this.rows = factored();
    }

    private static double[] greville(KnotVector knots) {
        double[] at = new double[knots.size()];
        for (int i = 0; i < at.length; i++) {
            at[i] = knots.greville(i);
        }
        return at;
    }

    private double[] factored() {
        int n = at.length;
        double[] band = new double[n * ROW];
        double[] basis = new double[16];
        for (int i = 0; i < n; i++) {
            int cell = knots.cell(at[i]);
            knots.basis(cell, at[i], basis);
            System.arraycopy(basis, 0, band, i * ROW + BAND + cell - i, 4);
        }
        for (int k = 0; k < n; k++) {
            for (int i = k + 1; i <= Math.min(n - 1, k + BAND); i++) {
                double factor = band[i * ROW + BAND + k - i] / band[k * ROW + BAND];
                band[i * ROW + BAND + k - i] = factor;
                for (int j = k + 1; j <= Math.min(n - 1, k + BAND); j++) {
                    band[i * ROW + BAND + j - i] -= factor * band[k * ROW + BAND + j - k];
                }
            }
        }
        return band;
    }

    public KnotVector knots() {
        return knots;
    }

    /** The spline through a value at every site. */
    public CubicSpline through(double[] values) {
        return new CubicSpline(knots, poles(values));
    }

    private double[] poles(double[] values) {
        int n = at.length;
        double[] x = values.clone();
        if (n != sites.length) {
            x = new double[n];
            for (int i = 0; i < n; i++) {
                x[i] = lagrange(values, at[i]);
            }
        }
        for (int i = 0; i < n; i++) {
            for (int k = Math.max(0, i - BAND); k < i; k++) {
                x[i] -= rows[i * ROW + BAND + k - i] * x[k];
            }
        }
        for (int i = n - 1; i >= 0; i--) {
            for (int j = i + 1; j <= Math.min(n - 1, i + BAND); j++) {
                x[i] -= rows[i * ROW + BAND + j - i] * x[j];
            }
            x[i] /= rows[i * ROW + BAND];
        }
        return x;
    }

    private double lagrange(double[] values, double t) {
        double sum = 0;
        for (int i = 0; i < sites.length; i++) {
            double term = values[i];
            for (int j = 0; j < sites.length; j++) {
                if (j != i) {
                    term *= (t - sites[j]) / (sites[i] - sites[j]);
                }
            }
            sum += term;
        }
        return sum;
    }
}
