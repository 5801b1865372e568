package org.garboard.hull;

import org.garboard.geometry.KnotVector;

/** Variation of curvature of a line over station index: the square of its third derivative. */
final class LineFairness implements Fairness {
    private final KnotVector along;

    LineFairness(KnotVector along) {
        this.along = along;
    }

    @Override
    public int size() {
        return along.size();
    }

    @Override
    public int halfWidth() {
        return Math.min(3, along.size() - 1);
    }

    /** A line has one weight; the second is passed over. */
    @Override
    public double[] band(double weight, double none) {
        double[][] third = SplineGram.ofDerivative(along, 3, PanelFairness.GROWTH);
        double[][] second = SplineGram.ofDerivative(along, 2);
        double[][] value = SplineGram.ofDerivative(along, 0);
        double[] band = new double[size() * (halfWidth() + 1)];
        for (int i = 0; i < size(); i++) {
            for (int j = Math.max(0, i - halfWidth()); j <= i; j++) {
                band[i * (halfWidth() + 1) + j - i + halfWidth()] = Math.pow(10, weight) * third[i][j]
                        + PanelFairness.SECOND_DERIVATIVE * second[i][j] + PanelFairness.VALUE * value[i][j];
            }
        }
        return band;
    }
}
