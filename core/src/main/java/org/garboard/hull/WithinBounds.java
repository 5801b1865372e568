package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;

/**
 * The least of squares plus fairness with no reading farther off than a bound: an active-set method that
 * starts from the unbounded least and holds the readings that would leave the bound at it.
 *
 * <p>At the end every multiplier has the sign of its reading's residual, which together with the bounds
 * proves the solution (Karush, Kuhn and Tucker; see Nocedal and Wright, <i>Numerical Optimization</i>,
 * 2nd ed. 2006, chapter 16, from memory). It stops after so many rounds at most: {@link KeptReadings} looks
 * at what came of it.
 */
final class WithinBounds {
    private static final double CLOSE = 1e-9;
    private static final int MOST_ROUNDS = 500;

    private final Smoothing free;
    private final List<Observation> points;
    private final double bound;
    private final List<Integer> held = new ArrayList<>();
    private final List<double[]> responses = new ArrayList<>();
    private double[] multipliers = new double[0];
    private double[] solution;

    /** @param bound largest residual of a reading [m] */
    WithinBounds(Smoothing free, double bound) {
        this.free = free;
        this.points = free.points();
        this.bound = bound;
        this.solution = free.solution();
        for (int round = 0; round < MOST_ROUNDS && improved(); round++) {
            solveHeld();
        }
    }

    double[] solution() {
        return solution;
    }

    /** Readings held at the bound. */
    List<Integer> held() {
        return List.copyOf(held);
    }

    /** Multiplier of each held reading: positive where the bound pushes its residual down. */
    double[] multipliers() {
        return multipliers.clone();
    }

    /** Lets go the reading whose multiplier has the wrong sign most, else holds the one farthest out. */
    private boolean improved() {
        int wrong = -1;
        for (int h = 0; h < held.size(); h++) {
            double pull = multipliers[h] * Math.signum(points.get(held.get(h)).residual(solution));
            if (pull < 0 && (wrong < 0 || pull < multipliers[wrong]
                    * Math.signum(points.get(held.get(wrong)).residual(solution)))) {
                wrong = h;
            }
        }
        if (wrong >= 0) {
            held.remove(wrong);
            responses.remove(wrong);
            return true;
        }
        int out = -1;
        double worst = bound * (1 + CLOSE);
        for (int p = 0; p < points.size(); p++) {
            double residual = Math.abs(points.get(p).residual(solution));
            if (residual > worst && !held.contains(p)) {
                worst = residual;
                out = p;
            }
        }
        if (out >= 0) {
            held.add(out);
            double[] response = new double[solution.length];
            points.get(out).spread(points.get(out).weight(), response);
            free.factor().solve(response);
            responses.add(response);
        }
        return out >= 0;
    }

    /** Multipliers that put every held reading on its bound: a small dense system, by elimination. */
    private void solveHeld() {
        int n = held.size();
        double[][] a = new double[n][n + 1];
        for (int i = 0; i < n; i++) {
            Observation point = points.get(held.get(i));
            double residual = point.residual(free.solution());
            for (int j = 0; j < n; j++) {
                a[i][j] = point.weight() * point.of(responses.get(j));
            }
            a[i][n] = residual - Math.copySign(bound, sideOf(point));
        }
        multipliers = eliminate(a);
        solution = free.solution().clone();
        for (int h = 0; h < n; h++) {
            for (int i = 0; i < solution.length; i++) {
                solution[i] += multipliers[h] * responses.get(h)[i];
            }
        }
    }

    private double sideOf(Observation point) {
        return point.residual(solution);
    }

    private static double[] eliminate(double[][] a) {
        int n = a.length;
        for (int k = 0; k < n; k++) {
            for (int i = k + 1; i < n; i++) {
                double factor = a[i][k] / a[k][k];
                for (int j = k; j <= n; j++) {
                    a[i][j] -= factor * a[k][j];
                }
            }
        }
        double[] x = new double[n];
        for (int k = n - 1; k >= 0; k--) {
            x[k] = a[k][n];
            for (int j = k + 1; j < n; j++) {
                x[k] -= a[k][j] * x[j];
            }
            x[k] /= a[k][k];
        }
        return x;
    }
}
