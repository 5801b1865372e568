package org.garboard.hull;

/**
 * One measured value of a function that is linear in unknowns. Owns its arrays.
 */
final class Observation {
    private final int[] unknowns;
    private final double[] factors;
    private final double value;
    private final double weight;

    /**
     * @param unknowns which unknowns it feels
     * @param factors how much of each
     * @param value what was measured
     * @param weight turns a difference of values into one of the table's own readings [m]
     */
    Observation(int[] unknowns, double[] factors, double value, double weight) {
        this.unknowns = unknowns;
        this.factors = factors;
        this.value = value;
        this.weight = weight;
    }

    double value() {
        return value;
    }

    double weight() {
        return weight;
    }

    /** What a solution gives for it. */
    double of(double[] solution) {
        double sum = 0;
        for (int a = 0; a < unknowns.length; a++) {
            sum += factors[a] * solution[unknowns[a]];
        }
        return sum;
    }

    /** Measured less given, in the table's own reading [m]. */
    double residual(double[] solution) {
        return weight * (value - of(solution));
    }

    /** Adds a multiple of its factors to a vector. */
    void spread(double multiple, double[] into) {
        for (int a = 0; a < unknowns.length; a++) {
            into[unknowns[a]] += multiple * factors[a];
        }
    }

    /** Adds a multiple of its square to a band matrix. */
    void addSquare(double multiple, double[] band, int halfWidth) {
        for (int a = 0; a < unknowns.length; a++) {
            int i = unknowns[a];
            for (int b = 0; b < unknowns.length; b++) {
                int j = unknowns[b];
                if (j <= i) {
                    band[i * (halfWidth + 1) + j - i + halfWidth] += multiple * factors[a] * factors[b];
                }
            }
        }
    }
}
