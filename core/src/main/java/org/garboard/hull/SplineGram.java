package org.garboard.hull;

import org.garboard.geometry.KnotVector;

/**
 * Quadratic measures of a cubic B-spline function as symmetric matrices over its poles,
 * {@code [i][j]} with |i - j| at most 4.
 */
final class SplineGram {
    /** Four-point Gauss quadrature on [0, 1] (Abramowitz and Stegun 25.4.30), exact for squares of cubics. */
    private static final double[] AT = {0.06943184420297371, 0.33000947820757187, 0.66999052179242813,
        0.93056815579702629};
    private static final double[] WEIGHT = {0.17392742256872693, 0.32607257743127307, 0.32607257743127307,
        0.17392742256872693};

    private SplineGram() {
    }

    /** Integral of the square of a derivative, order 0 to 3. */
    static double[][] ofDerivative(KnotVector knots, int order) {
        return ofDerivative(knots, order, 0);
    }

    /** The same weighted by ten to a power that rises evenly from -growth at the start to growth at the end. */
    static double[][] ofDerivative(KnotVector knots, int order, double growth) {
        double[][] gram = new double[knots.size()][knots.size()];
        double[] basis = new double[16];
        for (int cell = 0; cell < knots.cells(); cell++) {
            double width = knots.cellStart(cell + 1) - knots.cellStart(cell);
            for (int q = 0; q < AT.length; q++) {
                double t = knots.cellStart(cell) + width * AT[q];
                double weight = width * WEIGHT[q]
                        * Math.pow(10, growth * (2 * (t - knots.start()) / (knots.end() - knots.start()) - 1));
                knots.basis(cell, t, basis);
                for (int i = 0; i < 4; i++) {
                    for (int j = 0; j < 4; j++) {
                        gram[cell + i][cell + j] += weight * basis[order * 4 + i] * basis[order * 4 + j];
                    }
                }
            }
        }
        return gram;
    }

    /** Sum over the inner knots of the square of the third derivative's jump there. */
    static double[][] ofJumps(KnotVector knots) {
        double[][] gram = new double[knots.size()][knots.size()];
        double[] before = new double[16];
        double[] after = new double[16];
        for (int cell = 1; cell < knots.cells(); cell++) {
            knots.basis(cell - 1, knots.cellStart(cell), before);
            knots.basis(cell, knots.cellStart(cell), after);
            double[] jump = new double[5];
            for (int i = 0; i < 4; i++) {
                jump[i] -= before[12 + i];
                jump[i + 1] += after[12 + i];
            }
            for (int i = 0; i < 5; i++) {
                for (int j = 0; j < 5; j++) {
                    gram[cell - 1 + i][cell - 1 + j] += jump[i] * jump[j];
                }
            }
        }
        return gram;
    }
}
