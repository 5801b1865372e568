package org.garboard.hydrostatics;

import java.util.Arrays;
import org.garboard.geometry.GaussRule;

/**
 * Integrals of several functions along x over stretches on which they are smooth, but may begin and
 * end like a square root. Stretches are halved until the sums stand still.
 *
 * <p>Each stretch is run over with x = a + (b - a)(3 t^2 - 2 t^3), which takes the root away.
 */
final class LengthwiseSum {
    private static final GaussRule RULE = GaussRule.of(12);
    /** Two sums that agree so well are the answer: far within the skin's own tolerance, our choice. */
    private static final double AGREE = 1e-10;
    private static final int MOST_HALVINGS = 12;

    /** Several functions of x. */
    interface Functions {
        void at(double x, double[] out);
    }

    private final Functions functions;
    private final int count;
    private final double[] values;

    LengthwiseSum(Functions functions, int count) {
        this.functions = functions;
        this.count = count;
        this.values = new double[count];
    }

    /** The sums of the whole stretches as they are: to some millionths where they are smooth. */
    double[] roughly(double[] bounds) {
        double[] total = new double[count];
        for (int i = 0; i + 1 < bounds.length; i++) {
            double[] one = stretch(bounds[i], bounds[i + 1]);
            for (int k = 0; k < count; k++) {
                total[k] += one[k];
            }
        }
        return total;
    }

    /** @param bounds of the stretches, rising */
    double[] over(double[] bounds) {
        double[][] first = new double[bounds.length - 1][];
        double[] scale = new double[count];
        for (int i = 0; i < first.length; i++) {
            first[i] = stretch(bounds[i], bounds[i + 1]);
            for (int k = 0; k < count; k++) {
                scale[k] += Math.abs(first[i][k]);
            }
        }
        double[] total = new double[count];
        for (int i = 0; i < first.length; i++) {
            refine(bounds[i], bounds[i + 1], first[i], scale, MOST_HALVINGS, total);
        }
        return total;
    }

    private void refine(double from, double to, double[] whole, double[] scale, int halvings, double[] total) {
        double middle = 0.5 * (from + to);
        double[] one = stretch(from, middle);
        double[] other = stretch(middle, to);
        boolean agree = true;
        for (int k = 0; k < count; k++) {
            agree &= Math.abs(one[k] + other[k] - whole[k]) <= AGREE * scale[k];
        }
        if (agree || halvings == 0) {
            for (int k = 0; k < count; k++) {
                total[k] += one[k] + other[k];
            }
        } else {
            refine(from, middle, one, scale, halvings - 1, total);
            refine(middle, to, other, scale, halvings - 1, total);
        }
    }

    private double[] stretch(double from, double to) {
        double[] sum = new double[count];
        for (int i = 0; i < RULE.size(); i++) {
            double t = RULE.at(i);
            double weight = RULE.weight(i) * (to - from) * 6 * t * (1 - t);
            Arrays.fill(values, 0);
            functions.at(from + (to - from) * t * t * (3 - 2 * t), values);
            for (int k = 0; k < count; k++) {
                sum[k] += weight * values[k];
            }
        }
        return sum;
    }
}
