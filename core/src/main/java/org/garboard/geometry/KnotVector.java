package org.garboard.geometry;

import java.util.Arrays;

/**
 * The knots of a clamped cubic B-spline and its basis functions.
 *
 * <p>Basis and derivatives by the recurrences of Piegl and Tiller, <i>The NURBS Book</i> (2nd ed.
 * 1997), algorithms A2.1 to A2.3 (from memory).
 */
public final class KnotVector {
    /** Degree of every spline here. */
    public static final int DEGREE = 3;

    private static final int ORDER = DEGREE + 1;

    private final double[] knots;

    private KnotVector(double[] knots) {
        this.knots = knots;
    }

    /**
     * Knots with fourfold ends.
     *
     * @param start first parameter
     * @param end last parameter
     * @param interior rising, strictly between the two
     */
    public static KnotVector clamped(double start, double end, double... interior) {
        double[] knots = new double[interior.length + 2 * ORDER];
        Arrays.fill(knots, 0, ORDER, start);
        System.arraycopy(interior, 0, knots, ORDER, interior.length);
        Arrays.fill(knots, ORDER + interior.length, knots.length, end);
        for (int i = ORDER; i <= ORDER + interior.length; i++) {
            if (!(knots[i] > knots[i - 1])) {
                throw new IllegalArgumentException("knots do not rise: " + Arrays.toString(knots));
            }
        }
        return new KnotVector(knots);
    }

    /**
     * One knot at every site but the second and the last but one, so that as many values as
     * sites fix the spline and any cubic is met exactly ("not a knot").
     *
     * @param sites at least two, rising; fewer than four give a single cubic
     */
    public static KnotVector notAKnot(double... sites) {
        int n = sites.length;
        double[] interior = n > ORDER ? Arrays.copyOfRange(sites, 2, n - 2) : new double[0];
        return clamped(sites[0], sites[n - 1], interior);
    }

    /** The same cells, the outermost drawn out to a start no later and an end no earlier. */
    KnotVector reaching(double start, double end) {
        double[] inner = Arrays.copyOfRange(knots, ORDER, knots.length - ORDER);
        return clamped(Math.min(start, start()), Math.max(end, end()), inner);
    }

    /** One knot more, strictly between the ends. */
    public KnotVector with(double t) {
        double[] inner = Arrays.copyOfRange(knots, ORDER, knots.length - ORDER + 1);
        inner[inner.length - 1] = t;
        Arrays.sort(inner);
        return clamped(start(), end(), inner);
    }

    /** Number of basis functions, hence of poles. */
    public int size() {
        return knots.length - ORDER;
    }

    public double start() {
        return knots[0];
    }

    public double end() {
        return knots[knots.length - 1];
    }

    /** Number of intervals between distinct knots. */
    public int cells() {
        return size() - DEGREE;
    }

    /** The cell's first knot; {@code cellStart(cells())} is the end. */
    public double cellStart(int cell) {
        return knots[cell + DEGREE];
    }

    /** The cell that holds t; the ends' cells for t beyond them. */
    public int cell(double t) {
        int low = DEGREE;
        int high = size();
        while (high - low > 1) {
            int middle = (low + high) >>> 1;
            if (t < knots[middle]) {
                high = middle;
            } else {
                low = middle;
            }
        }
        return low - DEGREE;
    }

    /** Mean of the three inner knots under a basis function: where its pole sits (Greville). */
    public double greville(int function) {
        return (knots[function + 1] + knots[function + 2] + knots[function + 3]) / 3;
    }

    /** All knots, ends repeated, as CAD kernels and files want them. */
    public double[] toArray() {
        return knots.clone();
    }

    /**
     * Value at t of the spline with given poles, by de Boor's mixing of neighbours (de Boor 1972, from memory);
     * beyond the ends the end's cubic goes on. Allocates nothing.
     */
    double value(double[] poles, double t) {
        int cell = cell(t);
        double a = mixed(poles[cell], poles[cell + 1], t, cell + 1, 3);
        double b = mixed(poles[cell + 1], poles[cell + 2], t, cell + 2, 3);
        double c = mixed(poles[cell + 2], poles[cell + 3], t, cell + 3, 3);
        double d = mixed(a, b, t, cell + 2, 2);
        return mixed(d, mixed(b, c, t, cell + 3, 2), t, cell + 3, 1);
    }

    /** Slope at t likewise: the spline of one degree less whose poles are the steps from pole to pole over a third of their knots' reach. */
    double slope(double[] poles, double t) {
        int cell = cell(t);
        double a = step(poles, cell);
        double b = step(poles, cell + 1);
        double c = step(poles, cell + 2);
        return mixed(mixed(a, b, t, cell + 2, 2), mixed(b, c, t, cell + 3, 2), t, cell + 3, 1);
    }

    private double step(double[] poles, int pole) {
        return DEGREE * (poles[pole + 1] - poles[pole]) / (knots[pole + ORDER] - knots[pole + 1]);
    }

    /** Between two values as t lies between two knots so many apart. */
    private double mixed(double one, double other, double t, int knot, int apart) {
        double share = (t - knots[knot]) / (knots[knot + apart] - knots[knot]);
        return one + share * (other - one);
    }

    /**
     * Values and derivatives of the four basis functions that live on a cell.
     *
     * @param cell the cell, whose first function has the same index
     * @param t parameter
     * @param out filled with {@code out[order * 4 + function]}, orders 0 to 3
     */
    public void basis(int cell, double t, double[] out) {
        int span = cell + DEGREE;
        double[][] ndu = new double[ORDER][ORDER];
        double[] left = new double[ORDER];
        double[] right = new double[ORDER];
        ndu[0][0] = 1;
        for (int j = 1; j <= DEGREE; j++) {
            left[j] = t - knots[span + 1 - j];
            right[j] = knots[span + j] - t;
            double saved = 0;
            for (int r = 0; r < j; r++) {
                ndu[j][r] = right[r + 1] + left[j - r];
                double term = ndu[r][j - 1] / ndu[j][r];
                ndu[r][j] = saved + right[r + 1] * term;
                saved = left[j - r] * term;
            }
            ndu[j][j] = saved;
        }
        for (int j = 0; j <= DEGREE; j++) {
            out[j] = ndu[j][DEGREE];
        }
        derivatives(ndu, out);
    }

    private static void derivatives(double[][] ndu, double[] out) {
        double[][] a = new double[2][ORDER];
        for (int r = 0; r <= DEGREE; r++) {
            int now = 0;
            a[0][0] = 1;
            double factor = DEGREE;
            for (int k = 1; k <= DEGREE; k++) {
                int next = 1 - now;
                int rk = r - k;
                int pk = DEGREE - k;
                double d = 0;
                if (r >= k) {
                    a[next][0] = a[now][0] / ndu[pk + 1][rk];
                    d = a[next][0] * ndu[rk][pk];
                }
                int first = rk >= -1 ? 1 : -rk;
                int last = r - 1 <= pk ? k - 1 : DEGREE - r;
                for (int j = first; j <= last; j++) {
                    a[next][j] = (a[now][j] - a[now][j - 1]) / ndu[pk + 1][rk + j];
                    d += a[next][j] * ndu[rk + j][pk];
                }
                if (r <= pk) {
                    a[next][k] = -a[now][k - 1] / ndu[pk + 1][r];
                    d += a[next][k] * ndu[r][pk];
                }
                out[k * ORDER + r] = d * factor;
                factor *= DEGREE - k;
                now = next;
            }
        }
    }
}
