package org.garboard.hull;

import java.util.List;

/** What readings ask of a function by least squares, in their own weights: the same at every setting of its fairness. Owns its arrays. */
final class NormalEquations {
    private final List<Observation> points;
    private final double[] band;
    private final double[] right;

    /**
     * @param size number of unknowns
     * @param halfWidth of the band
     */
    NormalEquations(List<Observation> points, int size, int halfWidth) {
        this.points = points;
        this.band = new double[size * (halfWidth + 1)];
        this.right = new double[size];
        for (Observation point : points) {
            double square = point.weight() * point.weight();
            point.addSquare(square, band, halfWidth);
            point.spread(square * point.value(), right);
        }
    }

    List<Observation> points() {
        return points;
    }

    int size() {
        return right.length;
    }

    /** Entry of the matrix, laid out as {@link org.garboard.geometry.BandedCholesky} has it. */
    double band(int i) {
        return band[i];
    }

    /** The right-hand side. */
    double[] right() {
        return right.clone();
    }
}
