package org.garboard.cutout.template;

import org.garboard.cutout.FlatPoint;
import org.garboard.solid.Fill;

/** A net as it was laid first, and where its points have settled: takes other places along. */
record FlatNet(Fill net, double[] settled) {
    private static final double ROUNDING = 1e-9;

    /** Where a place of the first lay goes; in a hole of the net it goes with the nearest of its points. */
    FlatPoint at(double u, double v) {
        for (int t = 0; t < net.triangles(); t++) {
            int a = net.corner(t, 0);
            int b = net.corner(t, 1);
            int c = net.corner(t, 2);
            double whole = twice(net.u(a), net.v(a), net.u(b), net.v(b), net.u(c), net.v(c));
            double first = twice(u, v, net.u(b), net.v(b), net.u(c), net.v(c)) / whole;
            double second = twice(net.u(a), net.v(a), u, v, net.u(c), net.v(c)) / whole;
            double third = 1 - first - second;
            if (first >= -ROUNDING && second >= -ROUNDING && third >= -ROUNDING) {
                return new FlatPoint(u + shift(first, second, third, a, b, c, 0), v + shift(first, second, third, a, b, c, 1));
            }
        }
        int near = nearest(u, v);
        return new FlatPoint(u + moved(near, 0), v + moved(near, 1));
    }

    private int nearest(double u, double v) {
        int nearest = 0;
        for (int i = 1; i < net.points(); i++) {
            if (Math.hypot(net.u(i) - u, net.v(i) - v) < Math.hypot(net.u(nearest) - u, net.v(nearest) - v)) {
                nearest = i;
            }
        }
        return nearest;
    }

    private double shift(double first, double second, double third, int a, int b, int c, int k) {
        return first * moved(a, k) + second * moved(b, k) + third * moved(c, k);
    }

    private double moved(int point, int k) {
        return settled[2 * point + k] - (k == 0 ? net.u(point) : net.v(point));
    }

    private static double twice(double au, double av, double bu, double bv, double cu, double cv) {
        return (bu - au) * (cv - av) - (cu - au) * (bv - av);
    }
}
