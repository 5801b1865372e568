package org.garboard.hull;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import org.garboard.geometry.KnotVector;
import org.junit.jupiter.api.Test;

/** The bounded fit proves itself: Karush, Kuhn and Tucker's conditions hold to rounding. */
class WithinBoundsTest {
    private static final int STATIONS = 13;

    private final KnotVector along = KnotVector.notAKnot(StationIndex.upTo(STATIONS));
    private final LineFairness fairness = new LineFairness(along);

    private List<Observation> points() {
        List<Observation> points = new ArrayList<>();
        for (int j = 0; j < STATIONS; j++) {
            double[] basis = new double[16];
            int cell = along.cell(j);
            along.basis(cell, j, basis);
            points.add(new Observation(new int[] {cell, cell + 1, cell + 2, cell + 3},
                    new double[] {basis[0], basis[1], basis[2], basis[3]},
                    Math.sin(0.9 * j) + 0.1 * j, 1 + 0.1 * j));
        }
        return points;
    }

    private Smoothing free(List<Observation> points) {
        return new Smoothing(new NormalEquations(points, fairness.size(), fairness.halfWidth()), fairness.band(2, 0), fairness.halfWidth());
    }

    @Test
    void law_karushKuhnTucker() {
        List<Observation> points = points();
        double bound = 0.3;
        WithinBounds fit = new WithinBounds(free(points), bound);
        double[] solution = fit.solution();
        assertTrue(fit.held().size() >= 3, "bounds are at work: " + fit.held());

        // stationarity: fairness pull - squares' pull - multipliers' pull = 0
        double[] gradient = times(fairness.band(2, 0), solution);
        for (int p = 0; p < points.size(); p++) {
            double residual = points.get(p).residual(solution);
            assertTrue(Math.abs(residual) <= bound * (1 + 1e-8), "reading " + p + " is off by " + residual);
            double multiplier = fit.held().contains(p) ? fit.multipliers()[fit.held().indexOf(p)] : 0;
            assertTrue(multiplier * residual >= 0, "multiplier of reading " + p + " has the wrong sign");
            if (fit.held().contains(p)) {
                assertEquals(bound, Math.abs(residual), 1e-9, "held reading " + p);
            }
            points.get(p).spread(-points.get(p).weight() * (residual + multiplier), gradient);
        }
        for (double component : gradient) {
            assertEquals(0, component, 1e-8);
        }
    }

    private double[] times(double[] band, double[] x) {
        int w = fairness.halfWidth();
        double[] product = new double[x.length];
        for (int i = 0; i < x.length; i++) {
            for (int j = Math.max(0, i - w); j <= i; j++) {
                double entry = band[i * (w + 1) + j - i + w];
                product[i] += entry * x[j];
                if (j < i) {
                    product[j] += entry * x[i];
                }
            }
        }
        return product;
    }

    @Test
    void law_wideBoundsChangeNothing() {
        Smoothing free = free(points());
        WithinBounds fit = new WithinBounds(free, 100);
        assertTrue(fit.held().isEmpty());
        assertEquals(free.solution()[4], fit.solution()[4]);
    }
}
