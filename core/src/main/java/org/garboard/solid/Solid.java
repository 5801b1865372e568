package org.garboard.solid;

import java.util.Locale;

/**
 * A closed body bounded by triangles, seen from outside counter-clockwise. Metres.
 *
 * <p>It owns its arrays and never hands them out.
 */
public final class Solid {
    private final double[] places;
    private final int[] corners;
    private final double volume;
    private final double area;

    private Solid(double[] places, int[] corners, double volume, double area) {
        this.places = places;
        this.corners = corners;
        this.volume = volume;
        this.area = area;
    }

    /**
     * The body with these vertices and triangles.
     *
     * @param places x, y, z of each vertex [m]
     * @param corners three indices of vertices for each triangle, counter-clockwise from outside
     * @throws IllegalArgumentException if they do not bound one closed body, right side out, that survives
     *     being written in millimetres of single precision
     */
    public static Solid of(double[] places, int[] corners) {
        double[] ownPlaces = places.clone();
        int[] ownCorners = corners.clone();
        ClosedSurface.verify(ownPlaces, ownCorners);
        SinglePrecision.verify(ownPlaces);
        double area = 0;
        double volume = 0;
        for (int t = 0; t < ownCorners.length; t += 3) {
            TriangleMeasure triangle = TriangleMeasure.of(ownPlaces, ownCorners, t);
            if (!(triangle.area() > TriangleMeasure.LEAST)) {
                throw new IllegalArgumentException(String.format(Locale.ROOT,
                    "triangle %d has an area of %.3g m2; it must be above %.0e", t / 3, triangle.area(), TriangleMeasure.LEAST));
            }
            area += triangle.area();
            volume += triangle.volume(ownPlaces, 3 * ownCorners[t]);
        }
        if (!(volume > 0)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT,
                "the mesh is inside out: its volume is %.3g m3", volume));
        }
        return new Solid(ownPlaces, ownCorners, volume, area);
    }

    public int vertices() {
        return places.length / 3;
    }

    public int triangles() {
        return corners.length / 3;
    }

    public double x(int vertex) {
        return places[3 * vertex];
    }

    public double y(int vertex) {
        return places[3 * vertex + 1];
    }

    public double z(int vertex) {
        return places[3 * vertex + 2];
    }

    /** Vertex of a triangle's corner, 0 to 2. */
    public int corner(int triangle, int corner) {
        return corners[3 * triangle + corner];
    }

    /** By the divergence theorem [m3]; above 0. */
    public double volume() {
        return volume;
    }

    /** Of all faces [m2]. */
    public double area() {
        return area;
    }

    /** Vertices less edges plus triangles: 2 for a ball, 2 less for each hole through it. */
    public int eulerCharacteristic() {
        return vertices() - triangles() / 2;
    }

    /** How many holes go through it. */
    public int holes() {
        return 1 - eulerCharacteristic() / 2;
    }
}
