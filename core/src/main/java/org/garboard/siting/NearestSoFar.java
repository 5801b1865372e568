package org.garboard.siting;

/**
 * The best of places none of which serves, as far as a search has come: by governing utilisation, and of those of which something
 * fails outright, whose utilisation is infinite, by how much they miss in all. Shared by threads; whatever their order, no place is ruled
 * out that may be the best in the end, or its equal.
 */
final class NearestSoFar {
    /** Sums made in another order differ by less than this: twice what counts as the same. */
    private static final double MARGIN = 2 * SiteFinder.SAME;

    private volatile double utilisation = Double.POSITIVE_INFINITY;
    private volatile double missedByInfinite = Double.POSITIVE_INFINITY;

    /** Whether a place that has come to such figures, which only grow, is none of the best. */
    boolean isBetterThan(double used, double missed) {
        return used > utilisation + SiteFinder.EQUAL || used == Double.POSITIVE_INFINITY && missed > missedByInfinite + MARGIN;
    }

    /** Takes account of a place that was judged. */
    synchronized void add(double used, double missed) {
        utilisation = Math.min(utilisation, used);
        if (used == Double.POSITIVE_INFINITY) {
            missedByInfinite = Math.min(missedByInfinite, missed);
        }
    }
}
