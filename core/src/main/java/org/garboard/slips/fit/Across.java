package org.garboard.slips.fit;

import org.garboard.geometry.KnotVector;
import org.garboard.geometry.SplineGram;

/** Cubic splines across a panel, zero at its two lines, over v from 0 at the lower to 1 at the upper line. */
public final class Across {
    /** Finer than any table gives points; our choice, to bound the work. */
    private static final int MOST_CELLS = 12;

    private final KnotVector knots;
    private final double[][][] grams = new double[4][][];

    /** @param points most that a station has between the lines */
    public Across(int points) {
        int cells = Math.min(points + 1, MOST_CELLS);
        double[] inner = new double[cells - 1];
        for (int i = 0; i < inner.length; i++) {
            inner[i] = (i + 1.0) / cells;
        }
        knots = KnotVector.clamped(0, 1, inner);
        for (int order = 0; order < grams.length; order++) {
            double unit = Math.pow(1.0 / (points + 1), 2 * order);
            grams[order] = inside(SplineGram.ofDerivative(knots, order, v -> unit));
        }
    }

    /** Without the two functions that are not zero at the lines. */
    private static double[][] inside(double[][] gram) {
        int n = gram.length - 2;
        double[][] inside = new double[n][n];
        for (int i = 0; i < n; i++) {
            System.arraycopy(gram[i + 1], 1, inside[i], 0, n);
        }
        return inside;
    }

    public int columns() {
        return knots.size() - 2;
    }

    /** The column of the first of the four functions that are not zero at v; -1 is the one left out. */
    public int firstColumn(double v) {
        return knots.cell(v) - 1;
    }

    /** Values and derivatives there: {@code out[order * 4 + function]}. */
    public void basis(double v, double[] out) {
        knots.basis(knots.cell(v), v, out);
    }

    /** Integrals of products of derivatives; the unit of v is a step between points. */
    double[][] gram(int order) {
        return grams[order];
    }
}
