package org.garboard.hull;

/**
 * The face at which a length of the skin ends, fore or aft: x [m] over half-breadth and height [m]. The skin
 * of the length lies where its own x is no more (its after end) or more (its forward end) than the face's.
 */
public sealed interface EndFace permits PlanFace, TransomFace {

    /** x of the face [m]. */
    double x(double y, double z);

    /** No part of it on the skin stands forward of this [m]. */
    double least();

    /** No part of it on the skin stands abaft of this [m]. */
    double most();

    /** Whether it stands square across, at one x. */
    default boolean isSquare() {
        return least() == most();
    }
}
