package org.garboard.hull;

import java.util.List;
import org.garboard.geometry.BandedCholesky;

/**
 * The function of least fairness measure that takes every observed value exactly.
 *
 * <p>A penalised least-squares system, factored once, is solved with data that overshoot the values by as much
 * as makes the solution take them: the method of multipliers (Hestenes 1969, Powell 1969, from memory), its
 * multipliers found by conjugate gradients (Hestenes and Stiefel 1952, from memory). It stops when the residuals
 * vanish, or after so many rounds: {@link KeptReadings} looks at what came of it.
 */
final class ThroughPoints {
    private static final double POINT_WEIGHT = 1e4;
    private static final double RESIDUAL = 1e-12;
    private static final int MOST_ROUNDS = 200;

    private final List<Observation> points;
    private final BandedCholesky factor;
    private final int size;

    private ThroughPoints(List<Observation> points, BandedCholesky factor, int size) {
        this.points = points;
        this.factor = factor;
        this.size = size;
    }

    /**
     * @param fairness band of the measure, overwritten
     * @param halfWidth of the band
     */
    static double[] solve(List<Observation> points, double[] fairness, int size, int halfWidth) {
        for (Observation point : points) {
            point.addSquare(POINT_WEIGHT, fairness, halfWidth);
        }
        return new ThroughPoints(points, BandedCholesky.factorRaised(fairness, size, halfWidth), size).solution();
    }

    private double[] solution() {
        double[] values = points.stream().mapToDouble(Observation::value).toArray();
        double[] solution = smoothed(values);
        double[] residual = less(values, solution);
        double[] direction = residual.clone();
        double square = dot(residual, residual);
        for (int round = 0; round < MOST_ROUNDS && largest(residual) > RESIDUAL; round++) {
            double[] step = smoothed(direction);
            double[] answer = less(new double[residual.length], step);
            double length = -square / dot(direction, answer);
            add(length, step, solution);
            add(length, answer, residual);
            double next = dot(residual, residual);
            for (int p = 0; p < direction.length; p++) {
                direction[p] = residual[p] + next / square * direction[p];
            }
            square = next;
        }
        return solution;
    }

    /** Penalised least squares of data. */
    private double[] smoothed(double[] data) {
        double[] unknowns = new double[size];
        for (int p = 0; p < data.length; p++) {
            points.get(p).spread(POINT_WEIGHT * data[p], unknowns);
        }
        factor.solve(unknowns);
        return unknowns;
    }

    /** Data less what a solution gives for them. */
    private double[] less(double[] data, double[] solution) {
        double[] less = new double[data.length];
        for (int p = 0; p < less.length; p++) {
            less[p] = data[p] - points.get(p).of(solution);
        }
        return less;
    }

    private static void add(double multiple, double[] what, double[] to) {
        for (int i = 0; i < to.length; i++) {
            to[i] += multiple * what[i];
        }
    }

    private static double dot(double[] a, double[] b) {
        double sum = 0;
        for (int i = 0; i < a.length; i++) {
            sum += a[i] * b[i];
        }
        return sum;
    }

    private static double largest(double[] values) {
        double largest = 0;
        for (double value : values) {
            largest = Math.max(largest, Math.abs(value));
        }
        return largest;
    }
}
