package org.garboard.hull;

import java.util.List;
import org.garboard.geometry.BandedCholesky;

/**
 * Penalised least squares at one setting of the fairness: least sum of squared residuals, in the table's
 * own readings, plus the fairness measure.
 */
final class Smoothing {
    /**
     * How much a degree of freedom costs in {@link #risk}: 1 is unbiased, 1.4 guards against following the
     * rounding (Kim and Gu, J. R. Statist. Soc. B 66, 2004, from memory).
     */
    private static final double COST = 1.4;

    private final List<Observation> points;
    private final BandedCholesky factor;
    private final double[] solution;
    private final double squares;
    private final double freedom;

    /**
     * @param fairness band of the measure, overwritten
     * @param size number of unknowns
     */
    Smoothing(List<Observation> points, double[] fairness, int size, int halfWidth) {
        this.points = points;
        double[] data = new double[fairness.length];
        solution = new double[size];
        for (Observation point : points) {
            double square = point.weight() * point.weight();
            point.addSquare(square, data, halfWidth);
            point.spread(square * point.value(), solution);
        }
        for (int i = 0; i < data.length; i++) {
            fairness[i] += data[i];
        }
        factor = BandedCholesky.factorRaised(fairness, size, halfWidth);
        factor.solve(solution);
        double sum = 0;
        for (Observation point : points) {
            double residual = point.residual(solution);
            sum += residual * residual;
        }
        squares = sum;
        freedom = trace(factor.inverseBand(), data, halfWidth);
    }

    /** Trace of inverse times data, both symmetric bands: off the diagonal every entry counts twice. */
    private static double trace(double[] inverse, double[] data, int halfWidth) {
        double sum = 0;
        for (int i = 0; i < data.length; i++) {
            sum += (i % (halfWidth + 1) == halfWidth ? 1 : 2) * inverse[i] * data[i];
        }
        return sum;
    }

    double[] solution() {
        return solution;
    }

    List<Observation> points() {
        return points;
    }

    BandedCholesky factor() {
        return factor;
    }

    /**
     * Expected sum of squared errors, up to a constant, of readings with a known scatter (Mallows' C_p 1973;
     * Craven and Wahba 1979, from memory).
     *
     * @param scatter standard deviation of a reading [m]
     */
    double risk(double scatter) {
        return squares + 2 * COST * scatter * scatter * freedom;
    }
}
