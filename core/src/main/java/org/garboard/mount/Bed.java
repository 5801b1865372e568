package org.garboard.mount;

/**
 * The skin under a footprint and around it, as measured at one place: what a mount's checks read.
 * Lengths [m], angles [rad]. A figure that the mount's {@link Seat} does not call for is NaN.
 *
 * <p>Rooms are taken from the edge of the footprint to the nearest point of the line, straight, which
 * is never more than along the skin; negative where the footprint lies across the line.
 */
public interface Bed {

    /** Of the footprint's middle, aft of the origin; NaN where nobody asks. */
    default double x() {
        return Double.NaN;
    }

    /** Of the footprint's middle, to starboard, port negative; of a bottom that is alike on both sides, to starboard. */
    default double y() {
        return Double.NaN;
    }

    /** Largest less smallest distance of the skin from its best plane, square to that plane. */
    double gap();

    /** Deadrise of the best plane. */
    double deadrise();

    /** Rise of the best plane, or of the keel line, aft against the waterline at rest. */
    double slope();

    double roomToKeel();

    /** To the chine, or the sheer of a hull that has none. */
    double roomToBottomEdge();

    /** To the nearest other knuckle; infinite where the bottom has none. */
    double roomToKnuckle();

    /** In plan, to the nearest strake or fitting that is told; 0 where one lies under it, infinite where none is told. */
    double roomToFeature();

    /** Level, from the after end of the footprint to the foremost propeller; infinite where none is told. */
    double aheadOfPropellers();

    /** Level, from the nearer end of the footprint and its ramps to the end of the table. */
    double roomToEnds();

    /**
     * Straight aft from the after edge of the footprint and its ramps to the next step; negative where it lies across
     * a step, infinite where there is none abaft of it.
     */
    default double roomToStep() {
        return Double.POSITIVE_INFINITY;
    }

    /** Depth of the highest skin under the footprint below the waterline at rest. */
    double immersion();

    /** Height above base of the highest skin under the footprint; NaN where nobody asks. */
    default double highest() {
        return Double.NaN;
    }

    /** Rise of the V over the half width above the keel line, the largest over the footprint's length; NaN beside the keel. */
    default double rise() {
        return Double.NaN;
    }

    /** Largest less smallest distance of the keel line from its best straight, ramps included; NaN beside the keel. */
    default double keelGap() {
        return Double.NaN;
    }
}
