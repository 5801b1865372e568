package org.garboard.skin;

import java.util.ArrayList;
import java.util.List;

/**
 * A line of the planking: seam, butt, or row of fastenings, straight in plan from point to point.
 *
 * @param kind what it is
 * @param xs x of its points, aft of the origin [m]
 * @param ys y of its points, to starboard [m]; as many
 */
public record PlankLine(Kind kind, List<Double> xs, List<Double> ys) {
    public PlankLine {
        xs = List.copyOf(xs);
        ys = List.copyOf(ys);
        if (xs.size() < 2 || xs.size() != ys.size()) {
            throw new IllegalArgumentException("a " + kind.words() + " of " + xs.size() + " x and " + ys.size()
                + " y; it needs two points at least");
        }
    }

    /** What must not be cut. */
    public enum Kind {
        SEAM("seam"),
        BUTT("butt"),
        FASTENINGS("row of fastenings");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** The same line on the other side. */
    public PlankLine mirrored() {
        List<Double> other = new ArrayList<>();
        ys.forEach(y -> other.add(-y));
        return new PlankLine(kind, xs, other);
    }

    /** Level distance of a place [m], never more than along the skin. */
    double from(double x, double y) {
        double least = Double.POSITIVE_INFINITY;
        for (int i = 1; i < xs.size(); i++) {
            double dx = xs.get(i) - xs.get(i - 1);
            double dy = ys.get(i) - ys.get(i - 1);
            double square = dx * dx + dy * dy;
            double along = square > 0 ? ((x - xs.get(i - 1)) * dx + (y - ys.get(i - 1)) * dy) / square : 0;
            double t = Math.max(0, Math.min(1, along));
            least = Math.min(least, Math.hypot(x - xs.get(i - 1) - t * dx, y - ys.get(i - 1) - t * dy));
        }
        return least;
    }
}
