package org.garboard.hull;

import java.util.List;

/** From readings and a measure of fairness to the fairest function within the readings' rounding. */
final class FairFit {
    private final Fairness fairness;
    private final double leastCount;
    private final double[] weights;

    /**
     * Finds the fairness weights of least risk and keeps them.
     *
     * @param points the readings they are to suit
     * @param leastCount of the table [m]
     */
    FairFit(List<Observation> points, Fairness fairness, double leastCount) {
        this.fairness = fairness;
        this.leastCount = leastCount;
        this.weights = new FairnessSearch(Rounding.scatter(leastCount),
                (along, across) -> smoothing(points, along, across)).best();
    }

    Smoothing unbounded(List<Observation> points) {
        return smoothing(points, weights[0], weights[1]);
    }

    /** The same with no reading farther off than its rounding: the solution. */
    double[] within(List<Observation> points) {
        return new WithinBounds(unbounded(points), Rounding.bound(leastCount)).solution();
    }

    private Smoothing smoothing(List<Observation> points, double along, double across) {
        return new Smoothing(points, fairness.band(along, across), fairness.size(), fairness.halfWidth());
    }
}
