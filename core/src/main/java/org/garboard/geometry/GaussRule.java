package org.garboard.geometry;

/**
 * Gauss-Legendre quadrature on [0, 1]: exact for polynomials of degree 2n - 1.
 *
 * <p>Abscissae are the roots of the Legendre polynomial, by Newton's method; weights by
 * Abramowitz and Stegun, <i>Handbook of Mathematical Functions</i>, 25.4.29.
 */
public final class GaussRule {
    private final double[] at;
    private final double[] weight;

    private GaussRule(int points) {
        at = new double[points];
        weight = new double[points];
        for (int i = 0; i < points; i++) {
            double root = Math.cos(Math.PI * (i + 0.75) / (points + 0.5));
            double slope = 0;
            for (int turn = 0; turn < 100; turn++) {
                double value = 1;
                double before = 0;
                for (int k = 1; k <= points; k++) {
                    double next = ((2 * k - 1) * root * value - (k - 1) * before) / k;
                    before = value;
                    value = next;
                }
                slope = points * (root * value - before) / (root * root - 1);
                double step = value / slope;
                root -= step;
                if (Math.abs(step) < 1e-16) {
                    break;
                }
            }
            at[points - 1 - i] = 0.5 * (1 + root);
            weight[points - 1 - i] = 1 / ((1 - root * root) * slope * slope);
        }
    }

    /** The rule with so many points. */
    public static GaussRule of(int points) {
        if (points < 1) {
            throw new IllegalArgumentException("a quadrature has 1 point or more, not " + points);
        }
        return new GaussRule(points);
    }

    public int size() {
        return at.length;
    }

    public double at(int i) {
        return at[i];
    }

    public double weight(int i) {
        return weight[i];
    }
}
