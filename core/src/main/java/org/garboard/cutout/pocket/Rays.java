package org.garboard.cutout.pocket;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.solid.Parting;

/**
 * Places round the floor's outline, counter-clockwise seen from above and aft of starboard first, each with the
 * direction square to the outline in which walls and blends are followed. Where the skin has an edge that runs under
 * the pocket, one ray lies on it fore and one aft.
 */
final class Rays {
    private static final double SAME = 1e-9;

    private final List<double[]> rays = new ArrayList<>();
    private final double[] aft;
    private final double[] fore;

    /**
     * @param corner pieces of each quarter round
     * @param step along straight sides [m]
     */
    Rays(BodyOutline floor, int corner, double step, List<Parting.Line> creases) {
        double u = floor.length() / 2;
        double v = floor.width() / 2;
        double r = floor.radius();
        aft = creases.stream().mapToDouble(line -> line.v(u)).toArray();
        fore = creases.stream().mapToDouble(line -> line.v(-u)).toArray();
        quarter(u - r, v - r, r, 0, corner);
        side(u - r, -(u - r), new double[0], step, at -> new double[] {at, v, 0, 1});
        quarter(-(u - r), v - r, r, 1, corner);
        side(v - r, -(v - r), fore, step, at -> new double[] {-u, at, -1, 0});
        quarter(-(u - r), -(v - r), r, 2, corner);
        side(-(u - r), u - r, new double[0], step, at -> new double[] {at, -v, 0, -1});
        quarter(u - r, -(v - r), r, 3, corner);
        side(-(v - r), v - r, aft, step, at -> new double[] {u, at, 1, 0});
        if (same(rays.get(rays.size() - 1), rays.get(0))) {
            rays.remove(rays.size() - 1);
        }
    }

    private interface Side {
        double[] ray(double at);
    }

    private void quarter(double u, double v, double r, int quarter, int pieces) {
        for (int i = 0; i <= pieces; i++) {
            double angle = quarter * Math.PI / 2 + Math.PI / 2 * i / pieces;
            double cos = i == 0 ? new double[] {1, 0, -1, 0}[quarter] : i == pieces ? new double[] {0, -1, 0, 1}[quarter] : Math.cos(angle);
            double sin = i == 0 ? new double[] {0, 1, 0, -1}[quarter] : i == pieces ? new double[] {1, 0, -1, 0}[quarter] : Math.sin(angle);
            double[] ray = {u + r * cos, v + r * sin, cos, sin};
            if (rays.isEmpty() || !same(rays.get(rays.size() - 1), ray)) {
                rays.add(ray);
            }
        }
    }

    /** Between the ends of a straight side, without them. */
    private void side(double from, double to, double[] stops, double step, Side side) {
        List<Double> marks = new ArrayList<>(List.of(from));
        for (double stop : stops) {
            if (Math.abs(stop - from) > SAME && Math.abs(stop - to) > SAME && (stop - from) * (stop - to) < 0) {
                marks.add(stop);
            }
        }
        marks.add(to);
        marks.sort((a, b) -> from < to ? Double.compare(a, b) : Double.compare(b, a));
        for (int i = 0; i + 1 < marks.size(); i++) {
            double length = marks.get(i + 1) - marks.get(i);
            int parts = Math.max(1, (int) Math.ceil(Math.abs(length) / step - SAME));
            for (int k = i == 0 ? 1 : 0; k < parts; k++) {
                rays.add(side.ray(marks.get(i) + length * k / parts));
            }
        }
    }

    private static boolean same(double[] one, double[] other) {
        double most = 0;
        for (int k = 0; k < 4; k++) {
            most = Math.max(most, Math.abs(one[k] - other[k]));
        }
        return most < SAME;
    }

    int count() {
        return rays.size();
    }

    double u(int ray) {
        return rays.get(ray)[0];
    }

    double v(int ray) {
        return rays.get(ray)[1];
    }

    double alongU(int ray) {
        return rays.get(ray)[2];
    }

    double alongV(int ray) {
        return rays.get(ray)[3];
    }

    /** Whether it goes straight fore or aft from an end. */
    boolean isEnd(int ray) {
        return alongV(ray) == 0;
    }

    /** The ray aft that lies on a crease. */
    int aft(int crease) {
        return find(1, aft[crease]);
    }

    /** The ray forward that lies on it. */
    int fore(int crease) {
        return find(-1, fore[crease]);
    }

    private int find(double along, double v) {
        for (int i = 0; i < count(); i++) {
            if (alongU(i) == along && Math.abs(v(i) - v) < 1e-7) {
                return i;
            }
        }
        throw new IllegalArgumentException("no ray at v = " + v + " m");
    }

    /** How far an end's ray is moved sideways, going out to u, to stay on the creases [m]: 0 at the outline's corners. */
    double shift(int ray, double u, List<Parting.Line> creases, double straight) {
        double[] at = alongU(ray) > 0 ? aft : fore;
        double lowV = -straight;
        double highV = straight;
        double low = 0;
        double high = 0;
        for (int k = 0; k < at.length; k++) {
            double moved = creases.get(k).v(u) - at[k];
            if (at[k] <= v(ray) && at[k] >= lowV) {
                lowV = at[k];
                low = moved;
            }
            if (at[k] >= v(ray) && at[k] <= highV) {
                highV = at[k];
                high = moved;
            }
        }
        return highV - lowV < SAME ? low : low + (high - low) * (v(ray) - lowV) / (highV - lowV);
    }
}
