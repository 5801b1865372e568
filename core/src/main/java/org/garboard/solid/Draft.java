package org.garboard.solid;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A body in the making: rims are loops lifted to heights; faces fill them, walls join them. Heights rise along w.
 */
public final class Draft {
    private final Placement placement;
    private double[] places = new double[1024];
    private int vertices;
    private int[] corners = new int[1024];
    private int filled;

    /** @param placement of the plane in which loops and heights are given */
    public Draft(Placement placement) {
        this.placement = placement;
    }

    /** Which way a face looks. */
    public enum Looks { UP, DOWN }

    /** A loop lifted to a surface. */
    public static final class Rim {
        private final int[] vertices;

        private Rim(int[] vertices) {
            this.vertices = vertices;
        }
    }

    /** Lifts a loop. */
    public Rim rim(Loop loop, Height height) {
        return new Rim(IntStream.range(0, loop.size())
            .map(i -> vertex(loop.u(i), loop.v(i), height)).toArray());
    }

    private int vertex(double u, double v, Height height) {
        if (3 * vertices + 3 > places.length) {
            places = Arrays.copyOf(places, 2 * places.length);
        }
        placement.place(u, v, height.at(u, v), places, 3 * vertices);
        return vertices++;
    }

    /** A face between rims, its other points lifted to the same surface. */
    public void face(Looks looks, Fill fill, Height height, List<Rim> rims) {
        if (rims.size() != fill.loops()) {
            throw new IllegalArgumentException("a face with " + fill.loops() + " loops has as many rims, not " + rims.size());
        }
        int[] vertex = new int[fill.points()];
        for (int loop = 0; loop < fill.loops(); loop++) {
            int[] rim = rims.get(loop).vertices;
            System.arraycopy(rim, 0, vertex, fill.start(loop), rim.length);
        }
        for (int point = fill.start(fill.loops()); point < fill.points(); point++) {
            vertex[point] = vertex(fill.u(point), fill.v(point), height);
        }
        for (int t = 0; t < fill.triangles(); t++) {
            int a = vertex[fill.corner(t, 0)];
            int b = vertex[fill.corner(t, 1)];
            int c = vertex[fill.corner(t, 2)];
            triangle(a, looks == Looks.UP ? b : c, looks == Looks.UP ? c : b);
        }
    }

    /** The wall from a rim up to another of the same loop, seen from the loop's outside. */
    public void wallOutside(Rim lower, Rim upper) {
        wall(lower.vertices, upper.vertices);
    }

    /** The wall of a hole from a rim up to another of the same loop, seen from its inside. */
    public void wallInside(Rim lower, Rim upper) {
        wall(upper.vertices, lower.vertices);
    }

    private void wall(int[] one, int[] other) {
        for (int i = 0; i < one.length; i++) {
            int next = (i + 1) % one.length;
            triangle(one[i], one[next], other[next]);
            triangle(one[i], other[next], other[i]);
        }
    }

    private void triangle(int a, int b, int c) {
        if (filled + 3 > corners.length) {
            corners = Arrays.copyOf(corners, 2 * corners.length);
        }
        corners[filled++] = a;
        corners[filled++] = b;
        corners[filled++] = c;
    }

    /** The finished body. */
    public Solid solid() {
        return Solid.of(Arrays.copyOf(places, 3 * vertices), Arrays.copyOf(corners, filled));
    }
}
