package org.garboard.craft;

import org.garboard.hull.Hull;

/**
 * A place on the bottom as a yard measures it; which side is told beside it.
 *
 * @param datum from where along is measured
 * @param along level, along the base line [m]
 * @param measure how out is measured
 * @param out from the centreline or the keel line, 0 or more [m]
 */
public record FeaturePlace(Datum datum, double along, Measure measure, double out) {
    private static final int HALVINGS = 60;

    /** Where distances along the boat begin. */
    public enum Datum { AFT_OF_ORIGIN, AHEAD_OF_AFTER_END }

    /** Level from the centreline, or with a tape along the skin from the keel line. */
    public enum Measure { HALF_BREADTH, GIRTH }

    /** Aft of the origin [m]. */
    public double x(Hull hull) {
        return datum == Datum.AFT_OF_ORIGIN ? along : hull.foot() - along;
    }

    /** Half-breadth [m]; NaN where the skin ends before. */
    public double y(Hull hull) {
        double x = x(hull);
        if (measure == Measure.HALF_BREADTH) {
            return Double.isNaN(hull.height(x, out)) ? Double.NaN : out;
        }
        double low = 0;
        double high = hull.lines().stream().mapToDouble(line -> line.y(x)).max().orElse(0);
        if (Double.isNaN(hull.height(x, low)) || hull.girth(x, high) < out) {
            return Double.NaN;
        }
        for (int i = 0; i < HALVINGS; i++) {
            double middle = 0.5 * (low + high);
            if (hull.girth(x, middle) < out) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return high;
    }
}
