package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import org.garboard.offsets.LineKind;
import org.garboard.units.FixedDecimal;

/**
 * A stretch of the hull where a keel that fades is drawn inside out: between stations the curves of its top and its
 * bottom, or of its half-breadth and the centreline, swing past each other. What is drawn of the keel there is not to
 * be relied on.
 *
 * @param what which line is drawn on the wrong side of which, in words
 * @param from x of its forward end [m]
 * @param to x of its after end [m]
 * @param by how far they swing past each other at most [m]
 */
public record UnsureStretch(String what, double from, double to, double by) {
    /** How far apart sections are looked at [m]; our choice, a tenth of what any stations stand apart. */
    private static final double LOOKS = 0.01;
    /** What arithmetic alone may swing [m]. */
    private static final double SAME = 1e-6;

    /** How far one line is drawn past the other at x [m]; 0 or less where it is not. */
    private interface Past {
        double at(double x);
    }

    /** Of a hull from forward aft, line by line; more than the rounding of both lines explains. */
    public static List<UnsureStretch> of(Hull hull) {
        List<UnsureStretch> stretches = new ArrayList<>();
        for (int l = 1; l < hull.lines().size(); l++) {
            HullLine line = hull.lines().get(l);
            HullLine inner = hull.lines().get(l - 1);
            String name = line.name();
            if (line.kind() == LineKind.KEEL_TOP) {
                look(hull, name + " is drawn below " + inner.name(), x -> inner.z(x) - line.z(x), stretches);
            }
            if (line.kind() == LineKind.KEEL_TOP || line.kind() == LineKind.HALF_SIDING || line.kind() == LineKind.RABBET) {
                look(hull, name + " is drawn past the centreline", x -> -line.y(x), stretches);
            }
        }
        return List.copyOf(stretches);
    }

    private static void look(Hull hull, String what, Past past, List<UnsureStretch> stretches) {
        double allowed = 2 * hull.within() + SAME;
        double end = hull.bottomEnd();
        int looks = (int) Math.ceil((end - hull.forwardEnd()) / LOOKS);
        double from = Double.NaN;
        double most = 0;
        double last = Double.NaN;
        for (int i = 0; i <= looks; i++) {
            double x = Math.min(end, hull.forwardEnd() + i * LOOKS);
            double by = past.at(x);
            if (by > allowed) {
                from = from == from ? from : Math.max(hull.forwardEnd(), x - LOOKS);
                most = Math.max(most, by);
                last = Math.min(end, x + LOOKS);
            } else if (from == from) {
                stretches.add(new UnsureStretch(what, from, last, most));
                from = Double.NaN;
                most = 0;
            }
        }
        if (from == from) {
            stretches.add(new UnsureStretch(what, from, last, most));
        }
    }

    public boolean covers(double x) {
        return x >= from && x <= to;
    }

    /** A whole sentence for sheets and tables. */
    public String words() {
        return "THE KEEL IS UNSURE from x = " + FixedDecimal.format(from, 2) + " m to " + FixedDecimal.format(to, 2) + " m: between stations "
            + what + ", by up to " + FixedDecimal.format(1000 * by, 1)
            + " mm. No place is looked for on the keel there; stations closer together where it fades would settle it.";
    }
}
