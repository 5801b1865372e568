package org.garboard.cutout.template;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.garboard.solid.Fill;
import org.garboard.solid.Loop;
import org.garboard.solid.Parting;

/**
 * A net of triangles over a stretch of skin as it is seen along a frame's axis: u, v of its points [m]. No side of it
 * crosses an edge of the skin.
 */
final class SkinNet {
    private static final double ROUNDING = 1e-9;

    private final double[] places;
    private final int[] corners;

    private SkinNet(double[] places, int[] corners) {
        this.places = places;
        this.corners = corners;
    }

    /**
     * A net inside a loop; its points come first.
     *
     * @param creases edges of the skin that run through the loop, with points of it where they cross
     * @param step of the triangles [m]
     */
    static SkinNet of(Loop outer, List<Parting.Line> creases, double step) {
        Parting parting = Parting.of(outer, List.of(), creases, step);
        double[] places = new double[2 * parting.points()];
        for (int i = 0; i < parting.points(); i++) {
            places[2 * i] = parting.u(i);
            places[2 * i + 1] = parting.v(i);
        }
        int count = parting.points();
        List<int[]> triangles = new ArrayList<>();
        for (Parting.Piece piece : parting.pieces()) {
            Fill fill = Fill.of(parting.loop(piece.loop()), List.of(), step);
            int inside = piece.loop().size();
            places = Arrays.copyOf(places, 2 * (count + fill.points() - inside));
            for (int i = inside; i < fill.points(); i++) {
                places[2 * (count + i - inside)] = fill.u(i);
                places[2 * (count + i - inside) + 1] = fill.v(i);
            }
            for (int t = 0; t < fill.triangles(); t++) {
                int[] triangle = new int[3];
                for (int k = 0; k < 3; k++) {
                    int corner = fill.corner(t, k);
                    triangle[k] = corner < inside ? piece.loop().get(corner) : count + corner - inside;
                }
                triangles.add(triangle);
            }
            count += fill.points() - inside;
        }
        return new SkinNet(places, triangles.stream().flatMapToInt(Arrays::stream).toArray());
    }

    int points() {
        return places.length / 2;
    }

    double u(int point) {
        return places[2 * point];
    }

    double v(int point) {
        return places[2 * point + 1];
    }

    int triangles() {
        return corners.length / 3;
    }

    int corner(int triangle, int k) {
        return corners[3 * triangle + k];
    }

    /**
     * What the net's points have, taken in between them at a place; just outside the net as in the triangle beside it.
     *
     * @param values two for each point
     */
    double[] at(double u, double v, double[] values) {
        return between(places, u, v, values);
    }

    /**
     * The other way: the place that lies flat there.
     *
     * @param flat where the net's points lie
     */
    double[] seen(double[] flat, double u, double v) {
        return between(flat, u, v, places);
    }

    private double[] between(double[] where, double u, double v, double[] values) {
        double innermost = Double.NEGATIVE_INFINITY;
        double[] at = new double[2];
        for (int t = 0; t < triangles() && innermost < -ROUNDING; t++) {
            int a = corner(t, 0);
            int b = corner(t, 1);
            int c = corner(t, 2);
            double whole = twice(where, a, b, where[2 * c], where[2 * c + 1]);
            double first = twice(where, b, c, u, v) / whole;
            double second = twice(where, c, a, u, v) / whole;
            double third = 1 - first - second;
            double least = Math.min(first, Math.min(second, third));
            if (least > innermost) {
                innermost = least;
                at[0] = first * values[2 * a] + second * values[2 * b] + third * values[2 * c];
                at[1] = first * values[2 * a + 1] + second * values[2 * b + 1] + third * values[2 * c + 1];
            }
        }
        return at;
    }

    /** Twice the area of a triangle with two of the points. */
    private static double twice(double[] where, int a, int b, double u, double v) {
        return (where[2 * b] - where[2 * a]) * (v - where[2 * a + 1]) - (u - where[2 * a]) * (where[2 * b + 1] - where[2 * a + 1]);
    }
}
