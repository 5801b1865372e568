package org.garboard.hull;

import org.garboard.geometry.KnotVector;
import org.garboard.geometry.SplineGram;

/** Variation of curvature of a line over station index: the square of its third derivative. */
final class LineFairness implements Fairness {
    private final int size;
    private final int halfWidth;
    private final double[] base;
    private final double[] variation;

    LineFairness(KnotVector along) {
        double[][] third = SplineGram.ofDerivative(along, 3, PanelFairness.growing(along));
        double[][] second = SplineGram.ofDerivative(along, 2);
        double[][] value = SplineGram.ofDerivative(along, 0);
        size = along.size();
        halfWidth = Math.min(3, size - 1);
        base = new double[size * (halfWidth + 1)];
        variation = new double[base.length];
        for (int i = 0; i < size; i++) {
            for (int j = Math.max(0, i - halfWidth); j <= i; j++) {
                int at = i * (halfWidth + 1) + j - i + halfWidth;
                base[at] = PanelFairness.SECOND_DERIVATIVE * second[i][j] + PanelFairness.VALUE * value[i][j];
                variation[at] = third[i][j];
            }
        }
    }

    @Override
    public int size() {
        return size;
    }

    @Override
    public int halfWidth() {
        return halfWidth;
    }

    /** A line has one weight; the second is passed over. */
    @Override
    public double[] band(double weight, double none) {
        double factor = Math.pow(10, weight);
        double[] band = base.clone();
        for (int i = 0; i < band.length; i++) {
            band[i] += factor * variation[i];
        }
        return band;
    }
}
