package org.garboard.solid;

/**
 * A triangle's size, and the way it looks: a vector square to it, towards the side from which its corners run
 * counter-clockwise, as long as twice its area [m2].
 */
public record TriangleMeasure(double nx, double ny, double nz) {
    /** Least area of a triangle [m2]: a hundredth of a millimetre by a hundredth of a micrometre, our choice. */
    static final double LEAST = 1e-13;

    /**
     * Measures one.
     *
     * @param p coordinates of points, three each [m]
     * @param a where its first corner begins in them
     */
    public static TriangleMeasure of(double[] p, int a, int b, int c) {
        double ux = p[b] - p[a];
        double uy = p[b + 1] - p[a + 1];
        double uz = p[b + 2] - p[a + 2];
        double vx = p[c] - p[a];
        double vy = p[c + 1] - p[a + 1];
        double vz = p[c + 2] - p[a + 2];
        return new TriangleMeasure(uy * vz - uz * vy, uz * vx - ux * vz, ux * vy - uy * vx);
    }

    static TriangleMeasure of(double[] p, int[] corners, int at) {
        return of(p, 3 * corners[at], 3 * corners[at + 1], 3 * corners[at + 2]);
    }

    /** Length of the vector [m2]. */
    public double size() {
        return Math.sqrt(nx * nx + ny * ny + nz * nz);
    }

    double area() {
        return size() / 2;
    }

    /** Volume of the tetrahedron from it to the first of all points [m3], which keeps digits far from the origin. */
    double volume(double[] p, int a) {
        return ((p[a] - p[0]) * nx + (p[a + 1] - p[1]) * ny + (p[a + 2] - p[2]) * nz) / 6;
    }
}
