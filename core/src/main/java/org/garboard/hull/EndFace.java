package org.garboard.hull;

import java.util.function.DoubleUnaryOperator;

/**
 * The face at which a length of the skin ends, fore or aft: x [m] over half-breadth and height [m]. The skin
 * of the length lies where its own x is no more (its after end) or more (its forward end) than the face's.
 */
public sealed interface EndFace permits PlanFace, StemFace, TransomFace {

    /** x of the face [m]. */
    double x(double y, double z);

    /** No part of it on the skin stands forward of this [m]. */
    double least();

    /** No part of it on the skin stands abaft of this [m]. */
    double most();

    /**
     * x at which a line along the hull, in the length forward of it, meets the face [m]: the last at which it is
     * not beyond it, found to the last bit. The line is to cross the face once.
     *
     * @param y half-breadth of the line over x
     * @param z height of the line over x
     */
    default double end(DoubleUnaryOperator y, DoubleUnaryOperator z) {
        double low = least();
        double high = most();
        double atHigh = low == high ? 0 : shortOf(high, y, z);
        if (atHigh >= 0) {
            return high;
        }
        double atLow = shortOf(low, y, z);
        boolean byHalves = false;
        for (double next = between(low, high, atLow, atHigh, byHalves); next > low && next < high;
                next = between(low, high, atLow, atHigh, byHalves)) {
            double width = high - low;
            double at = shortOf(next, y, z);
            if (at >= 0) {
                low = next;
                atLow = at;
            } else {
                high = next;
                atHigh = at;
            }
            byHalves = !byHalves && high - low > 0.5 * width;
        }
        return low;
    }

    /** By how much a line at x falls short of the face there [m]; negative beyond it. */
    private double shortOf(double x, DoubleUnaryOperator y, DoubleUnaryOperator z) {
        return x(y.applyAsDouble(x), z.applyAsDouble(x)) - x;
    }

    /** Where a straight line would be nothing, an ulp or two farther so that the far end comes near as well; or the middle. */
    private static double between(double low, double high, double atLow, double atHigh, boolean byHalves) {
        double middle = 0.5 * (low + high);
        if (byHalves || !(atLow > 0) || high - low < 8 * Math.ulp(middle)) {
            return middle;
        }
        double straight = low + (high - low) * atLow / (atLow - atHigh);
        double beyond = straight + 2 * Math.ulp(middle) * (straight - low < high - straight ? 1 : -1);
        return beyond > low && beyond < high ? beyond : middle;
    }

    /** Whether it stands square across, at one x. */
    default boolean isSquare() {
        return least() == most();
    }
}
