package org.garboard.hull;

import java.util.List;
import org.garboard.geometry.BandedCholesky;

/**
 * The function of least fairness measure that takes every observed value exactly.
 *
 * <p>The values are held by the method of multipliers (Hestenes 1969, Powell 1969, from memory): a
 * penalised least-squares system, factored once, solved until the residuals vanish, or for
 * so many rounds: {@link KeptReadings} looks at what came of it.
 */
final class ThroughPoints {
    private static final double POINT_WEIGHT = 1e4;
    private static final double RESIDUAL = 1e-12;
    private static final int MOST_ROUNDS = 200;

    private ThroughPoints() {
    }

    /**
     * @param fairness band of the measure, overwritten
     * @param halfWidth of the band
     */
    static double[] solve(List<Observation> points, double[] fairness, int size, int halfWidth) {
        for (Observation point : points) {
            point.addSquare(POINT_WEIGHT, fairness, halfWidth);
        }
        BandedCholesky factor = BandedCholesky.factorRaised(fairness, size, halfWidth);
        double[] multipliers = new double[points.size()];
        double[] solution = new double[size];
        for (int round = 0; round < MOST_ROUNDS; round++) {
            double[] next = new double[size];
            for (int p = 0; p < multipliers.length; p++) {
                points.get(p).spread(POINT_WEIGHT * (points.get(p).value() + multipliers[p]), next);
            }
            factor.solve(next);
            solution = next;
            double worst = 0;
            for (int p = 0; p < multipliers.length; p++) {
                double residual = points.get(p).value() - points.get(p).of(solution);
                multipliers[p] += residual;
                worst = Math.max(worst, Math.abs(residual));
            }
            if (worst < RESIDUAL) {
                break;
            }
        }
        return solution;
    }
}
