package org.garboard.geometry;

import java.util.function.DoubleUnaryOperator;

/**
 * Quadratic measures of a cubic B-spline function as symmetric matrices over its poles,
 * {@code [i][j]} with |i - j| at most 4.
 */
public final class SplineGram {
    /** Exact for the squares of cubics. */
    private static final GaussRule RULE = GaussRule.of(4);

    private SplineGram() {
    }

    /** Integral of the square of a derivative, order 0 to 3. */
    public static double[][] ofDerivative(KnotVector knots, int order) {
        return ofDerivative(knots, order, t -> 1);
    }

    /**
     * The same, weighted.
     *
     * @param weight over the parameter
     */
    public static double[][] ofDerivative(KnotVector knots, int order, DoubleUnaryOperator weight) {
        double[][] gram = new double[knots.size()][knots.size()];
        double[] basis = new double[16];
        for (int cell = 0; cell < knots.cells(); cell++) {
            double width = knots.cellStart(cell + 1) - knots.cellStart(cell);
            for (int q = 0; q < RULE.size(); q++) {
                double t = knots.cellStart(cell) + width * RULE.at(q);
                double share = width * RULE.weight(q) * weight.applyAsDouble(t);
                knots.basis(cell, t, basis);
                for (int i = 0; i < 4; i++) {
                    for (int j = 0; j < 4; j++) {
                        gram[cell + i][cell + j] += share * basis[order * 4 + i] * basis[order * 4 + j];
                    }
                }
            }
        }
        return gram;
    }

    /** Sum over the inner knots of the square of the third derivative's jump there. */
    public static double[][] ofJumps(KnotVector knots) {
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
