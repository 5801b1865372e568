package org.garboard.flow.panels;

import java.util.function.BiConsumer;

/**
 * Solves linear equations from products with their matrix alone: the generalised method of least residuals,
 * without restarts (Y. Saad and M. H. Schultz, SIAM J. Sci. Stat. Comput. 7, 1986; from memory).
 */
final class Gmres {
    private final BiConsumer<double[], double[]> product;
    private final double within;
    private final int most;
    private int steps;
    private double left;

    /**
     * @param product writes the matrix times the first into the second
     * @param within how much of the right side may be left over
     * @param most steps
     */
    Gmres(BiConsumer<double[], double[]> product, double within, int most) {
        this.product = product;
        this.within = within;
        this.most = most;
    }

    /** Steps that the last solution took. */
    int steps() {
        return steps;
    }

    /** What it left over, as a part of the right side. */
    double left() {
        return left;
    }

    double[] solve(double[] right) {
        int n = right.length;
        double size = norm(right);
        steps = 0;
        left = 0;
        if (size == 0) {
            return new double[n];
        }
        int limit = Math.min(most, n);
        double[][] basis = new double[limit + 1][];
        double[][] h = new double[limit][];
        double[] cos = new double[limit];
        double[] sin = new double[limit];
        double[] g = new double[limit + 1];
        basis[0] = scaled(right, 1 / size);
        g[0] = size;
        left = 1;
        while (steps < limit && left > within) {
            double[] next = new double[n];
            product.accept(basis[steps], next);
            h[steps] = orthogonal(basis, next);
            double rest = norm(next);
            rotate(h[steps], rest, cos, sin, g);
            basis[steps + 1] = rest > 0 ? scaled(next, 1 / rest) : next;
            steps++;
            left = Math.abs(g[steps]) / size;
        }
        return combine(basis, back(h, g), n);
    }

    private double[] orthogonal(double[][] basis, double[] next) {
        double[] column = new double[steps + 2];
        for (int k = 0; k <= steps; k++) {
            double dot = 0;
            for (int i = 0; i < next.length; i++) {
                dot += basis[k][i] * next[i];
            }
            column[k] = dot;
            for (int i = 0; i < next.length; i++) {
                next[i] -= dot * basis[k][i];
            }
        }
        return column;
    }

    /** Givens rotations bring the column to a triangle. */
    private void rotate(double[] column, double rest, double[] cos, double[] sin, double[] g) {
        for (int k = 0; k < steps; k++) {
            double upper = cos[k] * column[k] + sin[k] * column[k + 1];
            column[k + 1] = -sin[k] * column[k] + cos[k] * column[k + 1];
            column[k] = upper;
        }
        double length = Math.hypot(column[steps], rest);
        cos[steps] = column[steps] / length;
        sin[steps] = rest / length;
        column[steps] = length;
        g[steps + 1] = -sin[steps] * g[steps];
        g[steps] *= cos[steps];
    }

    private double[] back(double[][] h, double[] g) {
        double[] y = new double[steps];
        for (int i = steps - 1; i >= 0; i--) {
            double sum = g[i];
            for (int k = i + 1; k < steps; k++) {
                sum -= h[k][i] * y[k];
            }
            y[i] = sum / h[i][i];
        }
        return y;
    }

    private static double[] combine(double[][] basis, double[] y, int n) {
        double[] x = new double[n];
        for (int k = 0; k < y.length; k++) {
            for (int i = 0; i < n; i++) {
                x[i] += y[k] * basis[k][i];
            }
        }
        return x;
    }

    private static double norm(double[] a) {
        double sum = 0;
        for (double each : a) {
            sum += each * each;
        }
        return Math.sqrt(sum);
    }

    private static double[] scaled(double[] a, double by) {
        double[] out = new double[a.length];
        for (int i = 0; i < a.length; i++) {
            out[i] = by * a[i];
        }
        return out;
    }
}
