package org.garboard.hull;

import java.util.List;

/** From readings and a measure of fairness to the fairest function within the readings' rounding. */
final class FairFit {

    private FairFit() {
    }

    /** The fairness weights of least risk, then the bounds. */
    static double[] within(List<Observation> points, Fairness fairness, double leastCount) {
        return new WithinBounds(best(points, fairness, leastCount), Rounding.bound(leastCount)).solution();
    }

    /** Without the bounds. */
    static Smoothing best(List<Observation> points, Fairness fairness, double leastCount) {
        double[] weights = new FairnessSearch(Rounding.scatter(leastCount),
                (along, across) -> smoothing(points, fairness, along, across)).best();
        return smoothing(points, fairness, weights[0], weights[1]);
    }

    private static Smoothing smoothing(List<Observation> points, Fairness fairness, double along, double across) {
        return new Smoothing(points, fairness.band(along, across), fairness.size(), fairness.halfWidth());
    }
}
