package org.garboard.geometry;

import java.util.function.DoubleUnaryOperator;

/**
 * The least-squares straight through a curve z(x), sampled evenly over a stretch of x.
 *
 * @param x middle of the stretch
 * @param z of the straight there
 * @param slope dz/dx
 * @param gap largest less smallest distance of the curve from the straight, square to it
 */
public record StraightFit(double x, double z, double slope, double gap) {

    /** The straight through samples of the curve from x - half to x + half; NaN where the curve is. */
    public static StraightFit over(DoubleUnaryOperator curve, double x, double half, int samples) {
        double sum = 0;
        double moment = 0;
        double squares = 0;
        double[] height = new double[samples];
        for (int k = 0; k < samples; k++) {
            double from = offset(k, samples, half);
            height[k] = curve.applyAsDouble(x + from);
            sum += height[k];
            moment += from * height[k];
            squares += from * from;
        }
        double mean = sum / samples;
        double slope = moment / squares;
        double least = Double.POSITIVE_INFINITY;
        double most = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < samples; k++) {
            double off = height[k] - mean - slope * offset(k, samples, half);
            least = Math.min(least, off);
            most = Math.max(most, off);
        }
        return new StraightFit(x, mean, slope, (most - least) / Math.sqrt(1 + slope * slope));
    }

    private static double offset(int k, int samples, double half) {
        return half * (2.0 * k / (samples - 1) - 1);
    }

    /** z of the straight at a place. */
    public double z(double at) {
        return z + slope * (at - x);
    }
}
