package org.garboard.geometry;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Where a field given at the nodes of a square grid is at most zero: the connected parts and the
 * rings that bound them, by marching squares with linear interpolation along the sides of the cells.
 *
 * <p>Nodes are connected along the sides of cells, never across a cell's diagonal. Outside the grid
 * the field counts as large, so every ring closes. Rings keep the low side on their left: the outer
 * ring of a part runs counter-clockwise, its holes clockwise.
 */
public final class LevelSet {
    private static final double OUTSIDE = 1e300;

    private final double[] field;
    private final int across;
    private final int along;
    private final double step;
    private final int[] part;
    private final boolean[] low;
    private final List<List<Ring>> rings = new ArrayList<>();

    /**
     * The parts of a field.
     *
     * @param field value at node (i, j) at index i * across + j; finite
     * @param across number of nodes in the direction of j
     * @param step side of a cell; node (i, j) lies at (i * step, j * step)
     */
    public LevelSet(double[] field, int across, double step) {
        this.field = field.clone();
        this.across = across;
        this.along = field.length / across;
        this.step = step;
        this.part = new int[field.length];
        this.low = new boolean[(along + 2) * (across + 2)];
        for (int node = 0; node < field.length; node++) {
            low[(node / across + 1) * (across + 2) + node % across + 1] = field[node] <= 0;
        }
        int parts = label();
        for (int p = 0; p < parts; p++) {
            rings.add(new ArrayList<>());
        }
        trace();
    }

    public int parts() {
        return rings.size();
    }

    /** The part a node belongs to, counted in the order of its first node; -1 where the field is above zero. */
    public int part(int node) {
        return part[node];
    }

    /** The rings of a part, its outer ring first. */
    public List<Ring> rings(int p) {
        return List.copyOf(rings.get(p));
    }

    private int label() {
        Arrays.fill(part, -1);
        int[] open = new int[field.length];
        int parts = 0;
        for (int first = 0; first < field.length; first++) {
            if (field[first] > 0 || part[first] >= 0) {
                continue;
            }
            int depth = 0;
            open[depth++] = first;
            part[first] = parts;
            while (depth > 0) {
                int node = open[--depth];
                int j = node % across;
                depth = reach(node - across, node >= across, parts, open, depth);
                depth = reach(node + across, node + across < field.length, parts, open, depth);
                depth = reach(node - 1, j > 0, parts, open, depth);
                depth = reach(node + 1, j + 1 < across, parts, open, depth);
            }
            parts++;
        }
        return parts;
    }

    private int reach(int node, boolean inside, int label, int[] open, int depth) {
        if (!inside || field[node] > 0 || part[node] >= 0) {
            return depth;
        }
        part[node] = label;
        open[depth] = node;
        return depth + 1;
    }

    /** Links the crossings of every cell, low side on the left, then follows each chain round. */
    private void trace() {
        int[] next = new int[2 * (along + 2) * (across + 2)];
        Arrays.fill(next, -1);
        int wide = across + 2;
        for (int at = 0; at + wide + 1 < low.length; at++) {
            boolean here = low[at];
            if (here != low[at + 1] || here != low[at + wide] || here != low[at + wide + 1]) {
                link(at / wide - 1, at % wide - 1, next);
            }
        }
        for (int side = 0; side < next.length; side++) {
            if (next[side] >= 0) {
                follow(side, next);
            }
        }
    }

    private void link(int i, int j, int[] next) {
        int corners = (low(i, j) ? 1 : 0) | (low(i + 1, j) ? 2 : 0)
            | (low(i + 1, j + 1) ? 4 : 0) | (low(i, j + 1) ? 8 : 0);
        int near = side(i, j, 0);
        int after = side(i + 1, j, 1);
        int far = side(i, j + 1, 0);
        int fore = side(i, j, 1);
        switch (corners) {
            case 1 -> next[near] = fore;
            case 2 -> next[after] = near;
            case 3 -> next[after] = fore;
            case 4 -> next[far] = after;
            case 6 -> next[far] = near;
            case 7 -> next[far] = fore;
            case 8 -> next[fore] = far;
            case 9 -> next[near] = far;
            case 11 -> next[after] = far;
            case 12 -> next[fore] = after;
            case 13 -> next[near] = after;
            case 14 -> next[fore] = near;
            case 5 -> {
                next[near] = fore;
                next[far] = after;
            }
            default -> {
                next[after] = near;
                next[fore] = far;
            }
        }
    }

    private void follow(int start, int[] next) {
        List<Vector2D> points = new ArrayList<>();
        int side = start;
        while (next[side] >= 0) {
            Vector2D point = crossing(side);
            if (points.isEmpty() || !point.equals(points.get(points.size() - 1))) {
                points.add(point);
            }
            int following = next[side];
            next[side] = -1;
            side = following;
        }
        if (points.size() > 1 && points.get(0).equals(points.get(points.size() - 1))) {
            points.remove(points.size() - 1);
        }
        if (points.size() < 3) {
            return;
        }
        Ring ring = new Ring(points);
        List<Ring> own = rings.get(part[lowNode(start)]);
        if (ring.area() > 0) {
            own.add(0, ring);
        } else {
            own.add(ring);
        }
    }

    private Vector2D crossing(int side) {
        int i = side / 2 / (across + 2) - 1;
        int j = side / 2 % (across + 2) - 1;
        double from = value(i, j);
        double to = side % 2 == 0 ? value(i + 1, j) : value(i, j + 1);
        double t = from / (from - to);
        return side % 2 == 0 ? Vector2D.of((i + t) * step, j * step) : Vector2D.of(i * step, (j + t) * step);
    }

    private int lowNode(int side) {
        int i = side / 2 / (across + 2) - 1;
        int j = side / 2 % (across + 2) - 1;
        if (low(i, j)) {
            return i * across + j;
        }
        return side % 2 == 0 ? (i + 1) * across + j : i * across + j + 1;
    }

    /** Number of the side from node (i, j) in the direction of i (0) or of j (1). */
    private int side(int i, int j, int direction) {
        return 2 * ((i + 1) * (across + 2) + j + 1) + direction;
    }

    private boolean low(int i, int j) {
        return low[(i + 1) * (across + 2) + j + 1];
    }

    private double value(int i, int j) {
        return i < 0 || j < 0 || i >= along || j >= across ? OUTSIDE : field[i * across + j];
    }
}
