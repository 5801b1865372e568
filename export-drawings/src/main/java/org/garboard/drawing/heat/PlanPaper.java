package org.garboard.drawing.heat;

import org.garboard.units.FixedDecimal;

/**
 * The bottom on paper, seen from below: bow to the right, starboard up.
 *
 * @param left where the after end stands [mm]
 * @param middle where the centreline runs, from above [mm]
 * @param afterEnd x of the after end [m]
 * @param scale millimetres on paper for a metre
 */
record PlanPaper(double left, double middle, double afterEnd, double scale) {
    private static final int PLACES = 2;

    double u(double x) {
        return left + (afterEnd - x) * scale;
    }

    /** @param y to starboard [m] */
    double v(double y) {
        return middle - y * scale;
    }

    /** "12.34 56.78". */
    String at(double x, double y) {
        return number(u(x)) + " " + number(v(y));
    }

    static String number(double millimetres) {
        return FixedDecimal.format(millimetres, PLACES);
    }
}
