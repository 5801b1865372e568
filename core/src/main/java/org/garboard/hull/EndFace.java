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
        if (high <= x(y.applyAsDouble(high), z.applyAsDouble(high))) {
            return high;
        }
        for (double middle = 0.5 * (low + high); middle > low && middle < high; middle = 0.5 * (low + high)) {
            if (middle <= x(y.applyAsDouble(middle), z.applyAsDouble(middle))) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return low;
    }

    /** Whether it stands square across, at one x. */
    default boolean isSquare() {
        return least() == most();
    }
}
