package org.garboard.hull;

/** What a table's least count says of its readings. */
final class Rounding {
    /** Kept back from half the least count, so that the drawn surface, a little bent there, stays inside it. */
    private static final double MARGIN = 0.005;

    private Rounding() {
    }

    /** Standard deviation of a reading rounded to the nearest step [m]: the step over the root of 12. */
    static double scatter(double leastCount) {
        return leastCount / Math.sqrt(12);
    }

    /** How far a reading may be from the surface [m]. */
    static double bound(double leastCount) {
        return leastCount / 2 * (1 - MARGIN);
    }
}
