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
        NormalEquations readings = equations(points);
        this.weights = new FairnessSearch(Rounding.scatter(leastCount),
                (along, across) -> smoothing(readings, along, across)).best();
    }

    Smoothing unbounded(List<Observation> points) {
        return smoothing(equations(points), weights[0], weights[1]);
    }

    /** The same with no reading farther off than its rounding: the solution. */
    double[] within(List<Observation> points) {
        return new WithinBounds(unbounded(points), Rounding.bound(leastCount)).solution();
    }

    private NormalEquations equations(List<Observation> points) {
        return new NormalEquations(points, fairness.size(), fairness.halfWidth());
    }

    private Smoothing smoothing(NormalEquations readings, double along, double across) {
        return new Smoothing(readings, fairness.band(along, across), fairness.halfWidth());
    }
}
