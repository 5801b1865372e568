package org.garboard.hull;

/**
 * The outside of one panel: its thickness set square to the inside, everywhere. Beyond the panel's edges the
 * inside goes on with the slope and curvature it has there, beyond its ends by its outermost cubics.
 */
final class OutsideFace {
    private static final double CLOSE = 1e-13;
    private static final int MOST_ROUNDS = 100;
    /**
     * Where the inside is so hollow that the outside shrinks to less than this share of it, the outside is
     * about to fold; our choice.
     */
    private static final double LEAST_STRETCH = 0.1;

    private final Panel panel;
    private final PanelCells inside;
    private final double thickness;
    private final double[] point = new double[Panel.POINT_SIZE];

    /** @param thickness 0 or more [m] */
    OutsideFace(Panel panel, double thickness) {
        this.panel = panel;
        this.inside = PanelCells.withMargins(panel);
        this.thickness = thickness;
    }

    Panel panel() {
        return panel;
    }

    double thickness() {
        return thickness;
    }

    /**
     * The point of the outside in the plane x that stands square to an inside place with parameter v; that
     * place lies a little forward or aft of the plane.
     *
     * @param yz filled with half-breadth and height [m]
     * @return false where there is no such point, or the outside folds
     */
    boolean at(double x, double v, double[] yz) {
        double from = insideX(x, v);
        if (from != from) {
            return false;
        }
        inside.evaluate(from, v, point, 0);
        yz[0] = point[Panel.Y] + thickness * point[Panel.NY];
        yz[1] = point[Panel.Z] + thickness * point[Panel.NZ];
        return yz[0] == yz[0] && yz[1] == yz[1] && 1 + thickness * point[Panel.K2] > LEAST_STRETCH;
    }

    /** Secant method for u + thickness * nx(u) = x, kept within a bracket, for |nx| is at most 1. */
    private double insideX(double x, double v) {
        double low = x - thickness;
        double high = x + thickness;
        double u = x;
        double off = past(u, v, x);
        double next = u - off;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            if (Math.abs(next - u) < CLOSE) {
                return next;
            }
            if (off > 0) {
                high = u;
            } else {
                low = u;
            }
            if (!(next >= low && next <= high)) {
                next = 0.5 * (low + high);
            }
            double nextOff = past(next, v, x);
            double slope = (nextOff - off) / (next - u);
            u = next;
            off = nextOff;
            next = slope > 0 ? u - off / slope : 0.5 * (low + high);
        }
        return Double.NaN;
    }

    private double past(double u, double v, double x) {
        inside.evaluate(u, v, point, 0);
        return u + thickness * point[Panel.NX] - x;
    }
}
