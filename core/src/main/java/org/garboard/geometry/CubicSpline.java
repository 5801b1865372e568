package org.garboard.geometry;

/** A cubic spline function of one variable, held as B-spline poles. */
public final class CubicSpline {
    private final KnotVector knots;
    private final double[] poles;

    private CubicSpline(KnotVector knots, double[] poles) {
        this.knots = knots;
        this.poles = poles;
    }

    /**
     * The spline through every value, not-a-knot at its ends; the polynomial of least degree
     * through two or three values.
     *
     * @param sites at least two, strictly rising
     * @param values as many
     */
    public static CubicSpline through(double[] sites, double[] values) {
        KnotVector knots = KnotVector.notAKnot(sites);
        int n = knots.size();
        double[] at = sites;
        double[] wanted = values;
        if (sites.length < n) {
            at = new double[n];
            wanted = new double[n];
            for (int i = 0; i < n; i++) {
                at[i] = knots.greville(i);
                wanted[i] = lagrange(sites, values, at[i]);
            }
        }
        return new CubicSpline(knots, solve(knots, at, wanted));
    }

    private static double lagrange(double[] sites, double[] values, double t) {
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

    /** Band elimination without pivoting: the collocation matrix is totally positive (de Boor 1978). */
    private static double[] solve(KnotVector knots, double[] at, double[] wanted) {
        int n = knots.size();
        double[][] rows = new double[n][n];
        double[] x = wanted.clone();
        double[] basis = new double[16];
        for (int i = 0; i < n; i++) {
            int cell = knots.cell(at[i]);
            knots.basis(cell, at[i], basis);
            System.arraycopy(basis, 0, rows[i], cell, 4);
        }
        for (int k = 0; k < n; k++) {
            for (int i = k + 1; i < Math.min(n, k + 4); i++) {
                double factor = rows[i][k] / rows[k][k];
                if (factor != 0) {
                    for (int j = k; j < Math.min(n, k + 5); j++) {
                        rows[i][j] -= factor * rows[k][j];
                    }
                    x[i] -= factor * x[k];
                }
            }
        }
        for (int k = n - 1; k >= 0; k--) {
            for (int j = k + 1; j < Math.min(n, k + 5); j++) {
                x[k] -= rows[k][j] * x[j];
            }
            x[k] /= rows[k][k];
        }
        return x;
    }

    public KnotVector knots() {
        return knots;
    }

    public double pole(int i) {
        return poles[i];
    }

    public double value(double t) {
        return derivative(0, t);
    }

    /** Derivative of an order from 0 to 3; beyond the ends the end's cubic goes on. */
    public double derivative(int order, double t) {
        int cell = knots.cell(t);
        double[] basis = new double[16];
        knots.basis(cell, t, basis);
        double sum = 0;
        for (int i = 0; i < 4; i++) {
            sum += basis[order * 4 + i] * poles[cell + i];
        }
        return sum;
    }
}
