package org.garboard.geometry;

/** Roots of a cubic c0 + c1 s + c2 s^2 + c3 s^3 on stretches where it only rises or only falls. */
public final class MonotoneCubic {
    private static final double CLOSE = 1e-13;
    private static final int MOST_STEPS = 60;

    private MonotoneCubic() {
    }

    /** The end of the stretch that begins at a place: the next zero of the slope, or 1. */
    public static double turn(double c1, double c2, double c3, double start) {
        double a = 3 * c3;
        double discriminant = c2 * c2 - a * c1;
        if (!(discriminant > 0)) {
            return 1;
        }
        double q = -(c2 + Math.copySign(Math.sqrt(discriminant), c2));
        double one = q / a;
        double other = c1 / q;
        double first = Math.min(one, other);
        double second = Math.max(one, other);
        double least = start + 1e-9;
        if (first > least && first < 1) {
            return first;
        }
        return second > least && second < 1 ? second : 1;
    }

    /** The root on a stretch, or an end of it that is within a distance of zero; NaN if there is none. */
    public static double crossing(double c0, double c1, double c2, double c3, double start, double end, double close) {
        double first = value(c0, c1, c2, c3, start);
        double last = value(c0, c1, c2, c3, end);
        if (first < 0 && last > 0) {
            return root(c0, c1, c2, c3, start, end);
        }
        if (first > 0 && last < 0) {
            return root(-c0, -c1, -c2, -c3, start, end);
        }
        if (Math.abs(first) <= close) {
            return start;
        }
        return Math.abs(last) <= close ? end : Double.NaN;
    }

    private static double value(double c0, double c1, double c2, double c3, double s) {
        return ((c3 * s + c2) * s + c1) * s + c0;
    }

    /** Root of a cubic that rises through zero on a stretch; the nearer end where it does not. */
    public static double root(double c0, double c1, double c2, double c3, double start, double end) {
        double first = value(c0, c1, c2, c3, start);
        double last = value(c0, c1, c2, c3, end);
        if (first >= 0) {
            return start;
        }
        if (last <= 0) {
            return end;
        }
        double below = start;
        double above = end;
        double s = start - first / (last - first) * (end - start);
        for (int i = 0; i < MOST_STEPS; i++) {
            double value = value(c0, c1, c2, c3, s);
            if (value > 0) {
                above = s;
            } else {
                below = s;
            }
            double next = s - value / ((3 * c3 * s + 2 * c2) * s + c1);
            if (Math.abs(next - s) < CLOSE) {
                return next;
            }
            if (!(next > below && next < above)) {
                next = 0.5 * (below + above);
            }
            s = next;
        }
        return s;
    }
}
