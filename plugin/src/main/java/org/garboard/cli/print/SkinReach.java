package org.garboard.cli.print;

import org.garboard.hull.Hull;
import org.garboard.units.FixedDecimal;

/** How far the skin reaches, for messages about places that are off it. */
public final class SkinReach {

    private SkinReach() {
    }

    /** "which runs from x = 0.000 m to 8.000 m", and at an x between how far out it reaches there. */
    public static String at(Hull hull, double x) {
        String along = along(hull);
        if (x < hull.forwardEnd() || x > hull.afterEnd()) {
            return along;
        }
        double widest = hull.lines().stream().mapToDouble(line -> line.y(x)).max().orElse(0);
        return along + " and there reaches " + metres(widest) + " from the centreline";
    }

    /** The first half of it. */
    public static String along(Hull hull) {
        return "which runs from x = " + metres(hull.forwardEnd()) + " to " + metres(hull.afterEnd());
    }

    private static String metres(double value) {
        return FixedDecimal.format(value, 3) + " m";
    }
}
