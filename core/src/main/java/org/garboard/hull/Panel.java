package org.garboard.hull;

import org.garboard.geometry.KnotVector;

/**
 * A smooth strip of skin between two named lines: a bicubic B-spline over x along the length and
 * v across, v = 0 on the line nearer the keel and 1 on the other. Hull frame, metres, starboard.
 *
 * <p>Beside its poles it keeps each cell as a polynomial, which is what is evaluated.
 */
public final class Panel {
    /** How many numbers {@link #evaluate} fills in; the places of each follow. */
    public static final int POINT_SIZE = 10;

    public static final int X = 0;
    public static final int Y = 1;
    public static final int Z = 2;
    public static final int NX = 3;
    public static final int NY = 4;
    public static final int NZ = 5;
    public static final int K1 = 6;
    public static final int K2 = 7;
    public static final int DZ_DY = 8;
    public static final int DZ_DX = 9;

    private final HullLine lower;
    private final HullLine upper;
    private final KnotVector along;
    private final KnotVector across;
    private final double[] polesY;
    private final double[] polesZ;
    private final CellIndex cellsU;
    private final CellIndex cellsV;
    private final double[] cellY;
    private final double[] cellZ;
    private final boolean spreadsOutward;

    Panel(HullLine lower, HullLine upper, KnotVector along, KnotVector across, double[] polesY, double[] polesZ) {
        this.lower = lower;
        this.upper = upper;
        this.along = along;
        this.across = across;
        this.polesY = polesY;
        this.polesZ = polesZ;
        this.cellsU = new CellIndex(along);
        this.cellsV = new CellIndex(across);
        this.cellY = CellPolynomials.of(along, across, polesY);
        this.cellZ = CellPolynomials.of(along, across, polesZ);
        this.spreadsOutward = risesAcross(cellY);
    }

    /** Whether a coordinate never falls with v, seen at 5 by 5 places of every cell. */
    private static boolean risesAcross(double[] cells) {
        for (int from = 0; from < cells.length; from += 16) {
            for (int i = 0; i <= 4; i++) {
                double t = i / 4.0;
                double b1 = cubic(cells, from + 4, t);
                double b2 = cubic(cells, from + 8, t);
                double b3 = cubic(cells, from + 12, t);
                for (int k = 0; k <= 4; k++) {
                    double s = k / 4.0;
                    if ((3 * b3 * s + 2 * b2) * s + b1 < -1e-9) {
                        return false;
                    }
                }
            }
        }
        return true;
    }

    /** True when half-breadth never falls from the lower line to the upper: one place for each y. */
    boolean spreadsOutward() {
        return spreadsOutward;
    }

    /** The line nearer the keel, v = 0. */
    public HullLine lower() {
        return lower;
    }

    /** The line nearer the sheer, v = 1. */
    public HullLine upper() {
        return upper;
    }

    public KnotVector knotsAlong() {
        return along;
    }

    public KnotVector knotsAcross() {
        return across;
    }

    /** Half-breadth of a pole [m]; its x is the Greville abscissa of its index along. */
    public double poleY(int i, int k) {
        return polesY[i * across.size() + k];
    }

    /** Height of a pole [m]. */
    public double poleZ(int i, int k) {
        return polesZ[i * across.size() + k];
    }

    CellIndex cellsAlong() {
        return cellsU;
    }

    CellIndex cellsAcross() {
        return cellsV;
    }

    /** The section at x as one cubic per cell across: {@code out[cell * 8 + power]} y, {@code + 4} z. */
    void section(double x, double[] out) {
        int iu = cellsU.cell(x);
        double t = (x - cellsU.bound(iu)) / (cellsU.bound(iu + 1) - cellsU.bound(iu));
        int nv = cellsV.cells();
        for (int iv = 0; iv < nv; iv++) {
            int from = (iu * nv + iv) * 16;
            for (int b = 0; b < 4; b++) {
                out[iv * 8 + b] = cubic(cellY, from + 4 * b, t);
                out[iv * 8 + 4 + b] = cubic(cellZ, from + 4 * b, t);
            }
        }
    }

    static double cubic(double[] a, int at, double t) {
        return ((a[at + 3] * t + a[at + 2]) * t + a[at + 1]) * t + a[at];
    }

    /**
     * Point, normal, curvatures and slopes at surface parameters.
     *
     * @param x aft of station 0 [m], within the panel
     * @param v across, 0 to 1
     * @param out filled from {@code at} with x, y, z, the unit normal into the water, k1, k2 (k1 &gt;= k2,
     *     [1/m]), dz/dy at constant x, dz/dx at constant y
     */
    public void evaluate(double x, double v, double[] out, int at) {
        int iu = cellsU.cell(x);
        int iv = cellsV.cell(v);
        double u0 = cellsU.bound(iu);
        double v0 = cellsV.bound(iv);
        double ru = 1 / (cellsU.bound(iu + 1) - u0);
        double rv = 1 / (cellsV.bound(iv + 1) - v0);
        evaluateCell((iu * cellsV.cells() + iv) * 16, x, (x - u0) * ru, (v - v0) * rv, ru, rv, out, at);
    }

    private void evaluateCell(int from, double x, double t, double s, double ru, double rv, double[] out, int at) {
        double[] a = cellY;
        double p0 = ((a[from + 3] * t + a[from + 2]) * t + a[from + 1]) * t + a[from];
        double p1 = ((a[from + 7] * t + a[from + 6]) * t + a[from + 5]) * t + a[from + 4];
        double p2 = ((a[from + 11] * t + a[from + 10]) * t + a[from + 9]) * t + a[from + 8];
        double p3 = ((a[from + 15] * t + a[from + 14]) * t + a[from + 13]) * t + a[from + 12];
        double d0 = (3 * a[from + 3] * t + 2 * a[from + 2]) * t + a[from + 1];
        double d1 = (3 * a[from + 7] * t + 2 * a[from + 6]) * t + a[from + 5];
        double d2 = (3 * a[from + 11] * t + 2 * a[from + 10]) * t + a[from + 9];
        double d3 = (3 * a[from + 15] * t + 2 * a[from + 14]) * t + a[from + 13];
        double y = ((p3 * s + p2) * s + p1) * s + p0;
        double yv = ((3 * p3 * s + 2 * p2) * s + p1) * rv;
        double yvv = (6 * p3 * s + 2 * p2) * rv * rv;
        double yu = (((d3 * s + d2) * s + d1) * s + d0) * ru;
        double yuv = ((3 * d3 * s + 2 * d2) * s + d1) * ru * rv;
        double yuu = second(a, from, t, s) * ru * ru;

        a = cellZ;
        p0 = ((a[from + 3] * t + a[from + 2]) * t + a[from + 1]) * t + a[from];
        p1 = ((a[from + 7] * t + a[from + 6]) * t + a[from + 5]) * t + a[from + 4];
        p2 = ((a[from + 11] * t + a[from + 10]) * t + a[from + 9]) * t + a[from + 8];
        p3 = ((a[from + 15] * t + a[from + 14]) * t + a[from + 13]) * t + a[from + 12];
        d0 = (3 * a[from + 3] * t + 2 * a[from + 2]) * t + a[from + 1];
        d1 = (3 * a[from + 7] * t + 2 * a[from + 6]) * t + a[from + 5];
        d2 = (3 * a[from + 11] * t + 2 * a[from + 10]) * t + a[from + 9];
        d3 = (3 * a[from + 15] * t + 2 * a[from + 14]) * t + a[from + 13];
        double z = ((p3 * s + p2) * s + p1) * s + p0;
        double zv = ((3 * p3 * s + 2 * p2) * s + p1) * rv;
        double zvv = (6 * p3 * s + 2 * p2) * rv * rv;
        double zu = (((d3 * s + d2) * s + d1) * s + d0) * ru;
        double zuv = ((3 * d3 * s + 2 * d2) * s + d1) * ru * rv;
        double zuu = second(a, from, t, s) * ru * ru;

        // S_u = (1, yu, zu), S_v = (0, yv, zv); S_v x S_u points into the water
        double nx = zu * yv - yu * zv;
        double square = nx * nx + zv * zv + yv * yv;
        double scale = 1 / Math.sqrt(square);
        double ny = zv * scale;
        double nz = -yv * scale;
        double e = 1 + yu * yu + zu * zu;
        double f = yu * yv + zu * zv;
        double g = yv * yv + zv * zv;
        double l = -(yuu * ny + zuu * nz);
        double m = -(yuv * ny + zuv * nz);
        double n = -(yvv * ny + zvv * nz);
        double mean = (e * n - 2 * f * m + g * l) / (2 * square);
        double gauss = (l * n - m * m) / square;
        double half = Math.sqrt(Math.max(0, mean * mean - gauss));
        out[at] = x;
        out[at + Y] = y;
        out[at + Z] = z;
        out[at + NX] = nx * scale;
        out[at + NY] = ny;
        out[at + NZ] = nz;
        out[at + K1] = mean + half;
        out[at + K2] = mean - half;
        out[at + DZ_DY] = zv / yv;
        out[at + DZ_DX] = zu - zv * yu / yv;
    }

    /** Height at surface parameters [m]. */
    double height(double x, double v) {
        int iu = cellsU.cell(x);
        int iv = cellsV.cell(v);
        double t = (x - cellsU.bound(iu)) / (cellsU.bound(iu + 1) - cellsU.bound(iu));
        double s = (v - cellsV.bound(iv)) / (cellsV.bound(iv + 1) - cellsV.bound(iv));
        int from = (iu * cellsV.cells() + iv) * 16;
        return ((cubic(cellZ, from + 12, t) * s + cubic(cellZ, from + 8, t)) * s + cubic(cellZ, from + 4, t)) * s
                + cubic(cellZ, from, t);
    }

    private static double second(double[] a, int from, double t, double s) {
        double q0 = 6 * a[from + 3] * t + 2 * a[from + 2];
        double q1 = 6 * a[from + 7] * t + 2 * a[from + 6];
        double q2 = 6 * a[from + 11] * t + 2 * a[from + 10];
        double q3 = 6 * a[from + 15] * t + 2 * a[from + 14];
        return ((q3 * s + q2) * s + q1) * s + q0;
    }

    /**
     * v of the place at x with half-breadth y, NaN where there is none; for a panel that
     * {@link #spreadsOutward}.
     *
     * <p>Walks to the cell from a straight-line guess, then Newton's method inside it, kept in the
     * cell by bisection.
     */
    double acrossAt(double x, double y) {
        int iu = cellsU.cell(x);
        double t = (x - cellsU.bound(iu)) / (cellsU.bound(iu + 1) - cellsU.bound(iu));
        int nv = cellsV.cells();
        int row = iu * nv * 16;
        double low = cubic(cellY, row, t);
        double high = cellEnd(row + (nv - 1) * 16, t);
        if (!(y >= low - EDGE && y <= high + EDGE)) {
            return Double.NaN;
        }
        double guess = high > low ? (y - low) / (high - low) : 0;
        int iv = cellsV.cell(Math.min(1, Math.max(0, guess)));
        while (iv > 0 && y < cubic(cellY, row + iv * 16, t)) {
            iv--;
        }
        while (iv < nv - 1 && y > cellEnd(row + iv * 16, t)) {
            iv++;
        }
        int from = row + iv * 16;
        double s = root(cubic(cellY, from, t) - y, cubic(cellY, from + 4, t), cubic(cellY, from + 8, t),
                cubic(cellY, from + 12, t));
        return cellsV.bound(iv) + s * (cellsV.bound(iv + 1) - cellsV.bound(iv));
    }

    /**
     * Puts the heights at x and half-breadths 0, step, 2 step … in place of those that are higher or NaN;
     * for a panel that {@link #spreadsOutward}.
     */
    void lowerHeights(double x, double step, double[] out, int at, int count) {
        int nv = cellsV.cells();
        double[] cells = new double[8 * nv];
        section(x, cells);
        int i = (int) Math.max(0, Math.ceil((cells[0] - EDGE) / step));
        for (int iv = 0; iv < nv; iv++) {
            int from = 8 * iv;
            double end = cubic(cells, from, 1) + (iv == nv - 1 ? EDGE : 0);
            for (; i < count && i * step <= end; i++) {
                double s = root(cells[from] - i * step, cells[from + 1], cells[from + 2], cells[from + 3]);
                double z = cubic(cells, from + 4, s);
                out[at + i] = z >= out[at + i] ? out[at + i] : z;
            }
        }
    }

    private static final double EDGE = 1e-9;

    private double cellEnd(int from, double t) {
        return cubic(cellY, from, t) + cubic(cellY, from + 4, t) + cubic(cellY, from + 8, t)
                + cubic(cellY, from + 12, t);
    }

    /** Root in [0, 1] of a cubic that rises through zero there; the nearer end where it does not. */
    static double root(double c0, double c1, double c2, double c3) {
        if (c0 >= 0) {
            return 0;
        }
        double end = c0 + c1 + c2 + c3;
        if (end <= 0) {
            return 1;
        }
        double below = 0;
        double above = 1;
        double s = -c0 / (end - c0);
        for (int i = 0; i < 60; i++) {
            double value = ((c3 * s + c2) * s + c1) * s + c0;
            if (value > 0) {
                above = s;
            } else {
                below = s;
            }
            double slope = (3 * c3 * s + 2 * c2) * s + c1;
            double next = s - value / slope;
            if (Math.abs(next - s) < 1e-14) {
                return next;
            }
            if (!(next > below && next < above)) {
                next = 0.5 * (below + above);
            }
            s = next;
        }
        return s;
    }
}
