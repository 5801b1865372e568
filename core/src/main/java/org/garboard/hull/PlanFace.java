package org.garboard.hull;

/**
 * A plumb face over a line in plan: straight from point to point, square across outboard of the last. Two
 * points at one half-breadth are the corners of a notch, on whose side the inboard corner answers. Owns its arrays.
 */
public final class PlanFace implements EndFace {
    /** So near the side of a notch a place is on it [m]: what lines along a buttock may stray by. */
    private static final double ON_NOTCH = 1e-10;

    private final double[] y;
    private final double[] x;
    private final double least;
    private final double most;

    PlanFace(double[] y, double[] x) {
        this.y = y.clone();
        this.x = x.clone();
        double low = x[0];
        double high = x[0];
        for (int i = 1; i < x.length; i++) {
            if (!(y[i] >= y[i - 1])) {
                throw new IllegalArgumentException("half-breadths of an end do not rise: " + y[i] + " m after " + y[i - 1] + " m");
            }
            low = Math.min(low, x[i]);
            high = Math.max(high, x[i]);
        }
        this.least = low;
        this.most = high;
    }

    /** Square across at x [m]. */
    static PlanFace square(double x) {
        return new PlanFace(new double[] {0}, new double[] {x});
    }

    /** x at a half-breadth [m]; at a notch its inboard corner's. */
    public double x(double side) {
        if (side <= upTo(0)) {
            return x[0];
        }
        for (int i = 1; i < y.length; i++) {
            if (side <= upTo(i)) {
                return x[i - 1] + (x[i] - x[i - 1]) * (side - y[i - 1]) / (y[i] - y[i - 1]);
            }
        }
        return x[x.length - 1];
    }

    private double upTo(int point) {
        return point + 1 < y.length && y[point + 1] == y[point] ? y[point] + ON_NOTCH : y[point];
    }

    @Override
    public double x(double side, double z) {
        return x(side);
    }

    @Override
    public double least() {
        return least;
    }

    @Override
    public double most() {
        return most;
    }

    /** Number of its points. */
    public int size() {
        return y.length;
    }

    /** Half-breadth of a point [m], rising. */
    public double pointY(int i) {
        return y[i];
    }

    /** x of a point [m]. */
    public double pointX(int i) {
        return x[i];
    }
}
