package org.garboard.solid;

import java.util.List;

/** A loop with loops cut out of it, filled with triangles. Its vertices are those of the loops in order, then others. */
public final class Fill {
    private final double[] places;
    private final int[] corners;
    private final int[] starts;

    private Fill(double[] places, int[] corners, int[] starts) {
        this.places = places;
        this.corners = corners;
        this.starts = starts;
    }

    /**
     * Fills loops; their own sides are kept as they are.
     *
     * @param outer the outer loop
     * @param holes loops inside it that do not touch it or each other
     * @param step of the triangles where there is room for more than the loops' own points [m]
     * @throws IllegalArgumentException if the loops cross or touch
     */
    public static Fill of(Loop outer, List<Loop> holes, double step) {
        int[] starts = new int[holes.size() + 2];
        starts[1] = outer.size();
        for (int i = 0; i < holes.size(); i++) {
            starts[i + 2] = starts[i + 1] + holes.get(i).size();
        }
        double[] places = new double[2 * starts[starts.length - 1]];
        copy(outer, places, 0);
        for (int i = 0; i < holes.size(); i++) {
            copy(holes.get(i), places, starts[i + 1]);
        }
        Refinement refined = new Refinement(places, EarClipping.fill(places, starts));
        refined.insertLattice(outer, holes.toArray(new Loop[0]), step);
        return new Fill(refined.places(), refined.corners(), starts);
    }

    private static void copy(Loop loop, double[] places, int at) {
        for (int i = 0; i < loop.size(); i++) {
            places[2 * (at + i)] = loop.u(i);
            places[2 * (at + i) + 1] = loop.v(i);
        }
    }

    public int points() {
        return places.length / 2;
    }

    public double u(int point) {
        return places[2 * point];
    }

    public double v(int point) {
        return places[2 * point + 1];
    }

    public int triangles() {
        return corners.length / 3;
    }

    /** Point of a triangle's corner, 0 to 2; counter-clockwise. */
    public int corner(int triangle, int corner) {
        return corners[3 * triangle + corner];
    }

    int loops() {
        return starts.length - 1;
    }

    /** First point of a loop, the outer being 0; the number of all loops' points behind the last. */
    int start(int loop) {
        return starts[loop];
    }
}
