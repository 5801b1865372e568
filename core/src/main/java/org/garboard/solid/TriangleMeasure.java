package org.garboard.solid;

/**
 * A triangle's size.
 *
 * @param area [m2]
 * @param volume of the tetrahedron from it to the mesh's first vertex [m3], which keeps digits far from the origin
 */
record TriangleMeasure(double area, double volume) {
    /** Least area of a triangle [m2]: a hundredth of a millimetre by a hundredth of a micrometre, our choice. */
    static final double LEAST = 1e-13;

    static TriangleMeasure of(double[] p, int[] corners, int at) {
        int a = 3 * corners[at];
        int b = 3 * corners[at + 1];
        int c = 3 * corners[at + 2];
        double ux = p[b] - p[a];
        double uy = p[b + 1] - p[a + 1];
        double uz = p[b + 2] - p[a + 2];
        double vx = p[c] - p[a];
        double vy = p[c + 1] - p[a + 1];
        double vz = p[c + 2] - p[a + 2];
        double nx = uy * vz - uz * vy;
        double ny = uz * vx - ux * vz;
        double nz = ux * vy - uy * vx;
        double height = (p[a] - p[0]) * nx + (p[a + 1] - p[1]) * ny + (p[a + 2] - p[2]) * nz;
        return new TriangleMeasure(Math.sqrt(nx * nx + ny * ny + nz * nz) / 2, height / 6);
    }
}
