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

    private final NormalEquations readings;
    private final BandedCholesky factor;
    private final double[] solution;
    private final double squares;
    private final double freedom;

    /**
     * @param fairness band of the measure, overwritten
     */
    Smoothing(NormalEquations readings, double[] fairness, int halfWidth) {
        this.readings = readings;
        for (int i = 0; i < fairness.length; i++) {
            fairness[i] += readings.band(i);
        }
        factor = BandedCholesky.factorRaised(fairness, readings.size(), halfWidth);
        solution = readings.right();
        factor.solve(solution);
        double sum = 0;
        for (Observation point : readings.points()) {
            double residual = point.residual(solution);
            sum += residual * residual;
        }
        squares = sum;
        freedom = trace(factor.inverseBand(), readings, halfWidth);
    }

    /** Trace of inverse times data, both symmetric bands: off the diagonal every entry counts twice. */
    private static double trace(double[] inverse, NormalEquations data, int halfWidth) {
        double sum = 0;
        for (int i = 0; i < inverse.length; i++) {
            sum += (i % (halfWidth + 1) == halfWidth ? 1 : 2) * inverse[i] * data.band(i);
        }
        return sum;
    }

    double[] solution() {
        return solution;
    }

    List<Observation> points() {
        return readings.points();
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
