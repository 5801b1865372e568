package org.garboard.solid;

import java.util.Arrays;

/**
 * Whether triangles close: every side shared by two that run along it in opposite directions, the triangles
 * round every vertex in one fan, all in one piece.
 */
final class ClosedSurface {
    private final int vertices;
    private final int[] corners;
    private final int[] opposite;

    private ClosedSurface(int vertices, int[] corners) {
        this.vertices = vertices;
        this.corners = corners;
        this.opposite = new int[corners.length];
    }

    static void verify(double[] places, int[] corners) {
        if (places.length % 3 != 0 || corners.length % 3 != 0 || corners.length < 12) {
            throw new IllegalArgumentException("a closed mesh has 4 triangles or more; here are " + corners.length
                + " corners and " + places.length + " coordinates");
        }
        for (double coordinate : places) {
            if (!Double.isFinite(coordinate)) {
                throw new IllegalArgumentException("a vertex has the coordinate " + coordinate);
            }
        }
        ClosedSurface surface = new ClosedSurface(places.length / 3, corners);
        surface.checkCorners();
        surface.pairSides();
        surface.checkFans();
        surface.checkOnePiece();
    }

    private void checkCorners() {
        for (int at = 0; at < corners.length; at++) {
            int vertex = corners[at];
            if (vertex < 0 || vertex >= vertices) {
                throw new IllegalArgumentException("triangle " + at / 3 + " names vertex " + vertex + " of " + vertices);
            }
            if (vertex == corners[next(at)]) {
                throw new IllegalArgumentException("triangle " + at / 3 + " names vertex " + vertex + " twice");
            }
        }
    }

    /** Sides as (from, to), sorted; the opposite of each is looked up. */
    private void pairSides() {
        long[] sides = new long[corners.length];
        for (int at = 0; at < corners.length; at++) {
            sides[at] = (long) corners[at] * vertices + corners[next(at)];
        }
        int[] order = SortedKeys.order(sides);
        long[] sorted = new long[sides.length];
        for (int i = 0; i < order.length; i++) {
            sorted[i] = sides[order[i]];
            if (i > 0 && sorted[i] == sorted[i - 1]) {
                throw new IllegalArgumentException("the side from vertex " + sorted[i] / vertices + " to "
                    + sorted[i] % vertices + " bounds two triangles on the same hand");
            }
        }
        for (int at = 0; at < corners.length; at++) {
            int found = Arrays.binarySearch(sorted, (long) corners[next(at)] * vertices + corners[at]);
            if (found < 0) {
                throw new IllegalArgumentException("the mesh is open at the side from vertex " + corners[at] + " to "
                    + corners[next(at)]);
            }
            opposite[at] = order[found];
        }
    }

    private void checkFans() {
        int[] incident = new int[vertices];
        int[] first = new int[vertices];
        Arrays.fill(first, -1);
        for (int at = corners.length - 1; at >= 0; at--) {
            incident[corners[at]]++;
            first[corners[at]] = at;
        }
        for (int vertex = 0; vertex < vertices; vertex++) {
            if (first[vertex] < 0) {
                throw new IllegalArgumentException("vertex " + vertex + " belongs to no triangle");
            }
            int round = 0;
            int at = first[vertex];
            do {
                at = opposite[previous(at)];
                round++;
            } while (at != first[vertex]);
            if (round != incident[vertex]) {
                throw new IllegalArgumentException("vertex " + vertex + " joins parts of the mesh that meet nowhere else");
            }
        }
    }

    private void checkOnePiece() {
        boolean[] seen = new boolean[corners.length / 3];
        int[] open = new int[seen.length];
        int depth = 1;
        int reached = 1;
        seen[0] = true;
        while (depth > 0) {
            int triangle = open[--depth];
            for (int k = 0; k < 3; k++) {
                int beside = opposite[3 * triangle + k] / 3;
                if (!seen[beside]) {
                    seen[beside] = true;
                    open[depth++] = beside;
                    reached++;
                }
            }
        }
        if (reached < seen.length) {
            throw new IllegalArgumentException("the mesh is in several pieces: " + reached + " of " + seen.length
                + " triangles hang together");
        }
    }

    private static int next(int at) {
        return at % 3 == 2 ? at - 2 : at + 1;
    }

    private static int previous(int at) {
        return at % 3 == 0 ? at + 2 : at - 1;
    }
}
