package org.garboard.siting;

import org.garboard.hull.Hull;

/** Places that a yard finds with a tape along the skin. */
final class Girth {
    private static final int TURNS = 40;
    private static final double CLOSE = 1e-10;
    private static final double NEIGHBOUR = 1e-4;

    private Girth() {
    }

    /** y of the starboard place at x with this girth from the keel line [m], NaN where the skin ends before. */
    static double halfBreadth(Hull hull, double x, double girth, double guess) {
        double y = guess;
        for (int turn = 0; turn < TURNS; turn++) {
            double missing = girth - hull.girth(x, y);
            if (Double.isNaN(missing) || Math.abs(missing) < CLOSE) {
                return Double.isNaN(missing) ? Double.NaN : y;
            }
            double rise = (hull.height(x, y + NEIGHBOUR) - hull.height(x, Math.max(0, y - NEIGHBOUR)))
                / (y + NEIGHBOUR - Math.max(0, y - NEIGHBOUR));
            y = Math.max(0, y + missing / Math.sqrt(1 + rise * rise));
        }
        return Double.NaN;
    }
}
