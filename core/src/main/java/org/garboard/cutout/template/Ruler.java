package org.garboard.cutout.template;

import java.util.Arrays;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.skin.AxisFrame;

/** Lengths along the skin held against the same lengths on a net that lies flat, between places of its outline. */
final class Ruler {
    /** Places between which lengths are compared; our choice, 120 lengths. */
    private static final int COMPARED = 16;
    /** Pieces of a line between two sides of the net. */
    private static final int PIECES = 3;

    private final AxisFrame frame;
    private final SkinNet net;
    private final double[] flat;

    Ruler(AxisFrame frame, SkinNet net, double[] flat) {
        this.frame = frame;
        this.net = net;
        this.flat = flat;
    }

    /** A length along the skin between two points of the net [m]. */
    private interface AlongSkin {
        double between(int a, int b) throws CannotBeBuilt;
    }

    /** The largest difference [m], along straightest lines of a skin without an edge. */
    double straightest(int outline) throws CannotBeBuilt {
        return worst(outline, (a, b) -> {
            double length = Sprawl.length(frame.skin(), x(a), y(a), x(b), y(b));
            if (length != length) {
                throw new CannotBeBuilt("no straight line along the skin joins two points of a template", "a smaller part, or a site on flatter skin");
            }
            return length;
        });
    }

    /** The same along the lines of the skin that lie straight on the flat, over edges too. */
    double underLines(int outline) throws CannotBeBuilt {
        return worst(outline, this::under);
    }

    private double worst(int outline, AlongSkin along) throws CannotBeBuilt {
        double most = 0;
        int count = Math.min(COMPARED, outline);
        for (int i = 0; i < count; i++) {
            for (int k = i + 1; k < count; k++) {
                int a = i * outline / count;
                int b = k * outline / count;
                double here = Math.hypot(flat[2 * a] - flat[2 * b], flat[2 * a + 1] - flat[2 * b + 1]);
                most = Math.max(most, Math.abs(along.between(a, b) - here));
            }
        }
        return most;
    }

    private double x(int point) {
        return frame.toHull(net.u(point), net.v(point), frame.outside(net.u(point), net.v(point))).getX();
    }

    private double y(int point) {
        return frame.toHull(net.u(point), net.v(point), frame.outside(net.u(point), net.v(point))).getY();
    }

    /** Length of what lies under the straight line from one point of the net to another. */
    private double under(int a, int b) {
        double[][] stops = new double[3 * net.triangles() + 2][];
        stops[0] = new double[] {0, net.u(a), net.v(a)};
        stops[1] = new double[] {1, net.u(b), net.v(b)};
        int count = 2;
        for (int t = 0; t < net.triangles(); t++) {
            for (int k = 0; k < 3; k++) {
                int from = net.corner(t, k);
                int to = net.corner(t, (k + 1) % 3);
                // each side inside stands in two triangles, and two stops at one place do no harm
                double[] stop = crossing(a, b, from, to);
                if (stop.length > 0) {
                    stops[count++] = stop;
                }
            }
        }
        double[][] line = Arrays.copyOf(stops, count);
        Arrays.sort(line, (one, other) -> Double.compare(one[0], other[0]));
        double sum = 0;
        for (int i = 1; i < count; i++) {
            sum += length(line[i - 1], line[i]);
        }
        return sum;
    }

    /** Share of the way and place in the frame where the line crosses a side; empty where it does not. */
    private double[] crossing(int a, int b, int from, int to) {
        double du = flat[2 * b] - flat[2 * a];
        double dv = flat[2 * b + 1] - flat[2 * a + 1];
        double su = flat[2 * to] - flat[2 * from];
        double sv = flat[2 * to + 1] - flat[2 * from + 1];
        double turn = du * sv - dv * su;
        double fu = flat[2 * from] - flat[2 * a];
        double fv = flat[2 * from + 1] - flat[2 * a + 1];
        double way = (fu * sv - fv * su) / turn;
        double share = (fu * dv - fv * du) / turn;
        if (!(way > 1e-9 && way < 1 - 1e-9 && share >= -1e-9 && share <= 1 + 1e-9)) {
            return new double[0];
        }
        return new double[] {way, net.u(from) + share * (net.u(to) - net.u(from)), net.v(from) + share * (net.v(to) - net.v(from))};
    }

    private double length(double[] from, double[] to) {
        double sum = 0;
        double plan = Math.hypot(to[1] - from[1], to[2] - from[2]) / PIECES;
        if (plan < 1e-12) {
            return 0;
        }
        double before = frame.outside(from[1], from[2]);
        for (int i = 1; i <= PIECES; i++) {
            double share = (double) i / PIECES;
            double here = frame.outside(from[1] + share * (to[1] - from[1]), from[2] + share * (to[2] - from[2]));
            sum += Math.hypot(plan, here - before);
            before = here;
        }
        return sum;
    }
}
