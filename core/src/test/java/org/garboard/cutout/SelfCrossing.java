package org.garboard.cutout;

import java.util.Arrays;
import java.util.Comparator;
import org.garboard.solid.Solid;

/**
 * Whether a closed mesh cuts through itself: every side of every triangle against every triangle near it that
 * shares no vertex with it. Slow and plain, for tests.
 */
public final class SelfCrossing {
    private final Solid solid;
    private final double[][] low;
    private final double[][] high;

    private SelfCrossing(Solid solid) {
        this.solid = solid;
        this.low = new double[solid.triangles()][3];
        this.high = new double[solid.triangles()][3];
        for (int t = 0; t < solid.triangles(); t++) {
            for (int k = 0; k < 3; k++) {
                low[t][k] = Math.min(of(t, 0, k), Math.min(of(t, 1, k), of(t, 2, k)));
                high[t][k] = Math.max(of(t, 0, k), Math.max(of(t, 1, k), of(t, 2, k)));
            }
        }
    }

    /** How many pairs of triangles cross. */
    public static int count(Solid solid) {
        return new SelfCrossing(solid).count();
    }

    private int count() {
        Integer[] order = new Integer[solid.triangles()];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        Arrays.sort(order, Comparator.comparingDouble(t -> low[t][0]));
        int crossings = 0;
        for (int i = 0; i < order.length; i++) {
            for (int j = i + 1; j < order.length && low[order[j]][0] < high[order[i]][0]; j++) {
                int a = order[i];
                int b = order[j];
                if (low[a][1] < high[b][1] && low[b][1] < high[a][1] && low[a][2] < high[b][2] && low[b][2] < high[a][2]
                        && !touch(a, b) && (pierces(a, b) || pierces(b, a))) {
                    crossings++;
                }
            }
        }
        return crossings;
    }

    private double of(int triangle, int corner, int k) {
        int vertex = solid.corner(triangle, corner);
        return k == 0 ? solid.x(vertex) : k == 1 ? solid.y(vertex) : solid.z(vertex);
    }

    private boolean touch(int a, int b) {
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                if (solid.corner(a, i) == solid.corner(b, j)) {
                    return true;
                }
            }
        }
        return false;
    }

    /** Whether a side of a goes through the inside of b. */
    private boolean pierces(int a, int b) {
        for (int i = 0; i < 3; i++) {
            double from = side(b, a, i);
            double to = side(b, a, (i + 1) % 3);
            if (from * to < 0) {
                double share = from / (from - to);
                double[] p = new double[3];
                for (int k = 0; k < 3; k++) {
                    p[k] = of(a, i, k) + share * (of(a, (i + 1) % 3, k) - of(a, i, k));
                }
                if (inside(b, p)) {
                    return true;
                }
            }
        }
        return false;
    }

    private double side(int plane, int triangle, int corner) {
        double[] n = normal(plane);
        double sum = 0;
        for (int k = 0; k < 3; k++) {
            sum += n[k] * (of(triangle, corner, k) - of(plane, 0, k));
        }
        return Math.abs(sum) < 1e-9 * Math.sqrt(n[0] * n[0] + n[1] * n[1] + n[2] * n[2]) ? 0 : sum;
    }

    private double[] normal(int t) {
        double[] u = new double[3];
        double[] v = new double[3];
        for (int k = 0; k < 3; k++) {
            u[k] = of(t, 1, k) - of(t, 0, k);
            v[k] = of(t, 2, k) - of(t, 0, k);
        }
        return new double[] {u[1] * v[2] - u[2] * v[1], u[2] * v[0] - u[0] * v[2], u[0] * v[1] - u[1] * v[0]};
    }

    private boolean inside(int t, double[] p) {
        double[] n = normal(t);
        double size = n[0] * n[0] + n[1] * n[1] + n[2] * n[2];
        for (int i = 0; i < 3; i++) {
            double[] e = new double[3];
            double[] d = new double[3];
            for (int k = 0; k < 3; k++) {
                e[k] = of(t, (i + 1) % 3, k) - of(t, i, k);
                d[k] = p[k] - of(t, i, k);
            }
            double turn = n[0] * (e[1] * d[2] - e[2] * d[1]) + n[1] * (e[2] * d[0] - e[0] * d[2]) + n[2] * (e[0] * d[1] - e[1] * d[0]);
            if (turn < 1e-9 * size) {
                return false;
            }
        }
        return true;
    }
}
