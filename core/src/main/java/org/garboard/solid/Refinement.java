package org.garboard.solid;

import java.util.Arrays;

/**
 * Improves triangles that fill loops: puts points of a regular lattice between the boundaries and swaps
 * diagonals until no circle round a triangle holds the fourth corner beside it (Lawson's flips, 1972, from
 * memory). The loops' own sides stay.
 */
final class Refinement {
    /** A diagonal is swapped only where it matters, so that rounding cannot swap for ever. */
    private static final double MATTERS = 1e-12;
    /** Lattice points keep so far from the loops, in steps; our choice. */
    private static final double CLEAR = 0.6;
    /** Turns the lattice so that it never falls on the sides of rectangles; our choice. */
    private static final double TURN = 0.3737;

    private double[] places;
    private int points;
    private int[] corners;
    /** The triangle and side across each side: 3 t + k, -1 on a loop. */
    private int[] across;
    private int[] open = new int[64];
    private int last;

    Refinement(double[] places, int[] corners) {
        this.places = places.clone();
        this.points = places.length / 2;
        this.corners = corners.clone();
        this.across = new int[corners.length];
        pair();
        for (int at = 0; at < this.corners.length; at++) {
            settle(at);
        }
    }

    int[] corners() {
        return Arrays.copyOf(corners, corners.length);
    }

    double[] places() {
        return Arrays.copyOf(places, 2 * points);
    }

    private void pair() {
        long[] sides = new long[corners.length];
        for (int at = 0; at < corners.length; at++) {
            sides[at] = (long) corners[at] * points + corners[next(at)];
        }
        int[] order = SortedKeys.order(sides);
        long[] sorted = new long[sides.length];
        for (int i = 0; i < order.length; i++) {
            sorted[i] = sides[order[i]];
        }
        for (int at = 0; at < corners.length; at++) {
            int found = Arrays.binarySearch(sorted, (long) corners[next(at)] * points + corners[at]);
            across[at] = found < 0 ? -1 : order[found];
        }
    }

    /** Puts in the points of a lattice of so many metres. */
    void insertLattice(Loop outer, Loop[] holes, double step) {
        double reach = 0;
        for (int i = 0; i < outer.size(); i++) {
            reach = Math.max(reach, Math.hypot(outer.u(i) - outer.u(0), outer.v(i) - outer.v(0)));
        }
        double row = step * Math.sqrt(3) / 2;
        int rows = (int) Math.ceil(reach / row);
        for (int j = -rows; j <= rows; j++) {
            for (int i = -rows; i <= rows; i++) {
                double a = (i + 0.5 * (j & 1)) * step;
                double b = j * row;
                double u = outer.u(0) + a * Math.cos(TURN) - b * Math.sin(TURN);
                double v = outer.v(0) + a * Math.sin(TURN) + b * Math.cos(TURN);
                if (isFree(u, v, outer, holes, CLEAR * step)) {
                    insert(u, v);
                }
            }
        }
    }

    private static boolean isFree(double u, double v, Loop outer, Loop[] holes, double room) {
        if (!outer.holds(u, v) || outer.distance(u, v) < room) {
            return false;
        }
        for (Loop hole : holes) {
            if (hole.holds(u, v) || hole.distance(u, v) < room) {
                return false;
            }
        }
        return true;
    }

    /** Parts the triangle that holds a place into three, then settles the sides round it. */
    private void insert(double u, double v) {
        int triangle = holding(u, v);
        if (triangle < 0) {
            return;
        }
        int point = addPoint(u, v);
        int a = 3 * triangle;
        int b = corners.length;
        int c = b + 3;
        corners = Arrays.copyOf(corners, b + 6);
        across = Arrays.copyOf(across, b + 6);
        int[] vertex = {corners[a], corners[a + 1], corners[a + 2]};
        int[] beyond = {across[a], across[a + 1], across[a + 2]};
        int[] base = {a, b, c};
        for (int k = 0; k < 3; k++) {
            corners[base[k]] = vertex[k];
            corners[base[k] + 1] = vertex[(k + 1) % 3];
            corners[base[k] + 2] = point;
            link(base[k], beyond[k]);
            link(base[k] + 1, base[(k + 1) % 3] + 2);
        }
        last = triangle;
        for (int k = 0; k < 3; k++) {
            settle(base[k]);
        }
    }

    private int addPoint(double u, double v) {
        if (2 * points + 2 > places.length) {
            places = Arrays.copyOf(places, 2 * places.length + 2);
        }
        places[2 * points] = u;
        places[2 * points + 1] = v;
        return points++;
    }

    private void link(int side, int other) {
        across[side] = other;
        if (other >= 0) {
            across[other] = side;
        }
    }

    /** Walks towards a place; where a loop stands in the way every triangle is asked. */
    private int holding(double u, double v) {
        int triangle = last;
        for (int steps = 0; steps < corners.length; steps++) {
            int leave = -1;
            for (int k = 0; k < 3; k++) {
                if (turn(corners[3 * triangle + k], corners[next(3 * triangle + k)], u, v) < 0) {
                    leave = 3 * triangle + k;
                }
            }
            if (leave < 0) {
                return inside(triangle, u, v) ? triangle : -1;
            }
            if (across[leave] < 0) {
                break;
            }
            triangle = across[leave] / 3;
        }
        for (int t = 0; t < corners.length / 3; t++) {
            if (inside(t, u, v)) {
                return t;
            }
        }
        return -1;
    }

    /** Inside by enough to part the triangle into three that are none too thin. */
    private boolean inside(int triangle, double u, double v) {
        for (int k = 0; k < 3; k++) {
            int at = 3 * triangle + k;
            if (!(turn(corners[at], corners[next(at)], u, v) > TriangleMeasure.LEAST * 1e3)) {
                return false;
            }
        }
        return true;
    }

    private void settle(int side) {
        int depth = 0;
        open[depth++] = side;
        while (depth > 0) {
            int at = open[--depth];
            int other = across[at];
            if (other < 0 || !shouldSwap(at, other)) {
                continue;
            }
            swap(at, other);
            if (depth + 4 > open.length) {
                open = Arrays.copyOf(open, 2 * open.length);
            }
            open[depth++] = at;
            open[depth++] = next(next(at));
            open[depth++] = other;
            open[depth++] = next(next(other));
        }
    }

    private boolean shouldSwap(int at, int other) {
        int a = corners[at];
        int b = corners[next(at)];
        int c = corners[next(next(at))];
        int d = corners[next(next(other))];
        double left = turn(c, a, places[2 * d], places[2 * d + 1]);
        double right = turn(c, d, places[2 * b], places[2 * b + 1]);
        if (!(left > TriangleMeasure.LEAST * 10 && right > TriangleMeasure.LEAST * 10)) {
            return false;
        }
        return inCircle(a, b, c, d) > MATTERS;
    }

    /** Above 0 where d lies in the circle round a, b, c; in units of the sides' fourth power. */
    private double inCircle(int a, int b, int c, int d) {
        double dx = places[2 * d];
        double dy = places[2 * d + 1];
        double ax = places[2 * a] - dx;
        double ay = places[2 * a + 1] - dy;
        double bx = places[2 * b] - dx;
        double by = places[2 * b + 1] - dy;
        double cx = places[2 * c] - dx;
        double cy = places[2 * c + 1] - dy;
        double aa = ax * ax + ay * ay;
        double bb = bx * bx + by * by;
        double cc = cx * cx + cy * cy;
        double determinant = aa * (bx * cy - cx * by) - bb * (ax * cy - cx * ay) + cc * (ax * by - bx * ay);
        double size = Math.max(aa, Math.max(bb, cc));
        return determinant / (size * size);
    }

    /** Turns the diagonal between two triangles: (a b c) and (b a d) become (a d c) and (d b c). */
    private void swap(int at, int other) {
        int a = corners[at];
        int b = corners[next(at)];
        int c = corners[next(next(at))];
        int d = corners[next(next(other))];
        int bc = across[next(at)];
        int ca = across[next(next(at))];
        int ad = across[next(other)];
        int db = across[next(next(other))];
        corners[at] = a;
        corners[next(at)] = d;
        corners[next(next(at))] = c;
        corners[other] = b;
        corners[next(other)] = c;
        corners[next(next(other))] = d;
        link(at, ad);
        link(next(next(at)), ca);
        link(other, bc);
        link(next(next(other)), db);
        link(next(at), next(other));
    }

    private double turn(int a, int b, double u, double v) {
        double ax = places[2 * a];
        double ay = places[2 * a + 1];
        return (places[2 * b] - ax) * (v - ay) - (u - ax) * (places[2 * b + 1] - ay);
    }

    private static int next(int at) {
        return at % 3 == 2 ? at - 2 : at + 1;
    }
}
