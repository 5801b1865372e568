package org.garboard.solid;

import java.util.Arrays;

/**
 * A body in the making, woven of points that faces share: strips between lines of points, and faces that fill a loop
 * of them. A point may stand several times in a line; a triangle that would have it twice is left out.
 */
public final class Weave {
    private final Placement placement;
    private double[] places = new double[3072];
    private int vertices;
    private int[] corners = new int[3072];
    private int filled;

    /** @param placement of the frame in which points are given */
    public Weave(Placement placement) {
        this.placement = placement;
    }

    /** Where a point that fills a face lies, and its number. */
    @FunctionalInterface
    public interface Filling {
        int point(double one, double other);
    }

    /** A new point; its number. */
    public int point(double u, double v, double w) {
        if (3 * vertices + 3 > places.length) {
            places = Arrays.copyOf(places, 2 * places.length);
        }
        placement.place(u, v, w, places, 3 * vertices);
        return vertices++;
    }

    /**
     * A strip between two closed lines of as many points, the outer counter-clockwise round the inner. Strips over and
     * under each other are parted alike, so that they do not cross where they come near.
     *
     * @param looks UP where it is seen so from outside the body
     */
    public void band(Draft.Looks looks, int[] outer, int[] inner) {
        strip(looks, outer, inner);
        quad(looks, outer, inner, outer.length - 1, 0);
    }

    /** The same between two open lines. */
    public void strip(Draft.Looks looks, int[] outer, int[] inner) {
        for (int i = 0; i + 1 < outer.length; i++) {
            quad(looks, outer, inner, i, i + 1);
        }
    }

    private void quad(Draft.Looks looks, int[] outer, int[] inner, int i, int next) {
        triangle(looks, outer[i], outer[next], inner[next]);
        triangle(looks, outer[i], inner[next], inner[i]);
    }

    /**
     * A face that fills loops of points.
     *
     * @param looks UP where its loops run counter-clockwise as seen from outside the body
     * @param loops numbers of the points, loop by loop as the fill has them
     */
    public void face(Draft.Looks looks, Fill fill, int[] loops, Filling filling) {
        int[] vertex = Arrays.copyOf(loops, fill.points());
        for (int point = loops.length; point < fill.points(); point++) {
            vertex[point] = filling.point(fill.u(point), fill.v(point));
        }
        for (int t = 0; t < fill.triangles(); t++) {
            int a = vertex[fill.corner(t, 0)];
            int b = vertex[fill.corner(t, 1)];
            int c = vertex[fill.corner(t, 2)];
            triangle(looks, a, b, c);
        }
    }

    private void triangle(Draft.Looks looks, int a, int b, int c) {
        if (a == b || b == c || c == a) {
            return;
        }
        if (filled + 3 > corners.length) {
            corners = Arrays.copyOf(corners, 2 * corners.length);
        }
        corners[filled++] = a;
        corners[filled++] = looks == Draft.Looks.UP ? b : c;
        corners[filled++] = looks == Draft.Looks.UP ? c : b;
    }

    /** Area of the triangles so far [m2]. */
    public double area() {
        double sum = 0;
        for (int at = 0; at < filled; at += 3) {
            sum += TriangleMeasure.of(places, corners, at).area();
        }
        return sum;
    }

    /** The finished body; points that no triangle took up are left out. */
    public Solid solid() {
        int[] number = new int[vertices];
        for (int at = 0; at < filled; at++) {
            number[corners[at]] = 1;
        }
        double[] kept = new double[3 * vertices];
        int count = 0;
        for (int vertex = 0; vertex < vertices; vertex++) {
            if (number[vertex] == 1) {
                System.arraycopy(places, 3 * vertex, kept, 3 * count, 3);
                number[vertex] = count++;
            }
        }
        int[] renumbered = new int[filled];
        for (int at = 0; at < filled; at++) {
            renumbered[at] = number[corners[at]];
        }
        return Solid.of(Arrays.copyOf(kept, 3 * count), renumbered);
    }
}
