package org.garboard.slips.fit;

import java.util.function.DoubleUnaryOperator;
import org.garboard.geometry.KnotVector;

/** Integrals of products of derivatives of spline functions. */
final class SplineGram {
    /** Four-point Gauss quadrature on [0, 1] (Abramowitz and Stegun 25.4.30). */
    private static final double[] AT = {0.06943184420297371, 0.33000947820757187, 0.66999052179242813,
        0.93056815579702629};
    private static final double[] WEIGHT = {0.17392742256872693, 0.32607257743127307, 0.32607257743127307,
        0.17392742256872693};

    private SplineGram() {
    }

    /**
     * @param order of the derivative, 0 to 3
     * @param weight over the parameter
     */
    static double[][] of(KnotVector knots, int order, DoubleUnaryOperator weight) {
        double[][] gram = new double[knots.size()][knots.size()];
        double[] basis = new double[16];
        for (int cell = 0; cell < knots.cells(); cell++) {
            double width = knots.cellStart(cell + 1) - knots.cellStart(cell);
            for (int q = 0; q < AT.length; q++) {
                double at = knots.cellStart(cell) + width * AT[q];
                knots.basis(cell, at, basis);
                double share = width * WEIGHT[q] * weight.applyAsDouble(at);
                for (int i = 0; i < 4; i++) {
                    for (int j = 0; j < 4; j++) {
                        gram[cell + i][cell + j] += share * basis[order * 4 + i] * basis[order * 4 + j];
                    }
                }
            }
        }
        return gram;
    }
}
