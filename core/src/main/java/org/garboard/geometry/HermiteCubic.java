package org.garboard.geometry;

/** A cubic on [0, 1], known by its values and slopes at both ends. */
public final class HermiteCubic {
    private final double c0;
    private final double c1;
    private final double c2;
    private final double c3;

    public HermiteCubic(double first, double slopeThere, double last, double slopeLast) {
        c0 = first;
        c1 = slopeThere;
        c2 = 3 * (last - first) - 2 * slopeThere - slopeLast;
        c3 = 2 * (first - last) + slopeThere + slopeLast;
    }

    public double value(double s) {
        return ((c3 * s + c2) * s + c1) * s + c0;
    }

    /** The least value and where it is first taken, within a distance: {s, value}. */
    public double[] least(double within) {
        double[] least = {0, c0};
        double start = 0;
        while (start < 1) {
            start = MonotoneCubic.turn(c1, c2, c3, start);
            if (value(start) < least[1] - within) {
                least = new double[] {start, value(start)};
            }
        }
        return least;
    }

    /** Where it crosses zero, rising order, and 1 at the end: between two neighbours its sign is one. */
    public double[] partings() {
        double[] partings = new double[4];
        int count = 0;
        double start = 0;
        while (start < 1) {
            double end = MonotoneCubic.turn(c1, c2, c3, start);
            double crossing = MonotoneCubic.crossing(c0, c1, c2, c3, start, end, 0);
            if (crossing > 0 && crossing < 1) {
                partings[count++] = crossing;
            }
            start = end;
        }
        double[] all = new double[count + 1];
        System.arraycopy(partings, 0, all, 0, count);
        all[count] = 1;
        return all;
    }
}
