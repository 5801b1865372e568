package org.garboard.hull;

import static org.garboard.hull.Panel.DZ_DX;
import static org.garboard.hull.Panel.DZ_DY;
import static org.garboard.hull.Panel.K1;
import static org.garboard.hull.Panel.K2;
import static org.garboard.hull.Panel.NX;
import static org.garboard.hull.Panel.NY;
import static org.garboard.hull.Panel.NZ;
import static org.garboard.hull.Panel.Y;
import static org.garboard.hull.Panel.Z;

import org.garboard.geometry.KnotVector;
import org.garboard.geometry.MonotoneCubic;

/**
 * A panel's cells as polynomials, for evaluation: each cell holds the sixteen coefficients of y, then of z,
 * in powers of its own parameters t along and s across, 0 to 1. Nothing here allocates.
 */
final class PanelCells {
    private static final double EDGE = 1e-9;

    private final CellIndex along;
    private final CellIndex across;
    private final double[] cellY;
    private final double[] cellZ;
    /** For each cell along: whether half-breadth never falls from the lower line to the upper. */
    private final boolean[] spreads;

    PanelCells(KnotVector knotsAlong, KnotVector knotsAcross, double[] polesY, double[] polesZ) {
        this(knotsAlong, knotsAcross, new double[][] {CellPolynomials.of(knotsAlong, knotsAcross, polesY),
            CellPolynomials.of(knotsAlong, knotsAcross, polesZ)});
    }

    private PanelCells(KnotVector knotsAlong, KnotVector knotsAcross, double[][] cells) {
        along = new CellIndex(knotsAlong);
        across = new CellIndex(knotsAcross);
        cellY = cells[0];
        cellZ = cells[1];
        spreads = new boolean[along.cells()];
        for (int iu = 0; iu < spreads.length; iu++) {
            spreads[iu] = risesAcross(iu);
        }
    }

    /** The same with a margin beyond both edges, see {@link CellPolynomials#withMargins}. */
    static PanelCells withMargins(Panel panel) {
        PanelCells cells = panel.cells();
        return new PanelCells(panel.knotsAlong(), CellPolynomials.withMargins(panel.knotsAcross()), new double[][] {
            CellPolynomials.withMargins(cells.cellY, cells.across), CellPolynomials.withMargins(cells.cellZ, cells.across)});
    }

    /** Looked at on 5 by 5 places of every cell. */
    private boolean risesAcross(int iu) {
        for (int iv = 0; iv < across.cells(); iv++) {
            int from = from(iu, iv);
            for (int i = 0; i <= 4; i++) {
                double b1 = cubic(cellY, from + 4, i / 4.0);
                double b2 = cubic(cellY, from + 8, i / 4.0);
                double b3 = cubic(cellY, from + 12, i / 4.0);
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

    CellIndex along() {
        return along;
    }

    CellIndex across() {
        return across;
    }

    private int from(int iu, int iv) {
        return (iu * across.cells() + iv) * 16;
    }

    static double cubic(double[] a, int at, double t) {
        return ((a[at + 3] * t + a[at + 2]) * t + a[at + 1]) * t + a[at];
    }

    /** The section at x as one cubic per cell across: {@code out[cell * 8 + power]} y, {@code + 4} z. */
    void section(double x, double[] out) {
        int iu = along.cell(x);
        double t = along.local(iu, x);
        for (int iv = 0; iv < across.cells(); iv++) {
            for (int b = 0; b < 4; b++) {
                out[iv * 8 + b] = cubic(cellY, from(iu, iv) + 4 * b, t);
                out[iv * 8 + 4 + b] = cubic(cellZ, from(iu, iv) + 4 * b, t);
            }
        }
    }

    /**
     * The same with the slopes along, over the share of the cell along: {@code out[cell * size + power]} y, {@code + 4} z, {@code + 8} y's
     * slope, {@code + 12} z's. Answers by what slopes are multiplied to be over x [1/m].
     */
    double section(double x, double[] out, int size) {
        int iu = along.cell(x);
        double t = along.local(iu, x);
        for (int iv = 0; iv < across.cells(); iv++) {
            for (int b = 0; b < 4; b++) {
                int from = from(iu, iv) + 4 * b;
                int at = iv * size + b;
                out[at] = cubic(cellY, from, t);
                out[at + 4] = cubic(cellZ, from, t);
                out[at + 8] = slope(cellY, from, t);
                out[at + 12] = slope(cellZ, from, t);
            }
        }
        return along.inverseWidth(iu);
    }

    /** See {@link Panel#evaluate}. */
    void evaluate(double x, double v, double[] out, int at) {
        int iu = along.cell(x);
        evaluate(x, iu, along.local(iu, x), v, out, at);
    }

    /** The same with the cell along and the place in it known. */
    void evaluate(double x, int iu, double t, double v, double[] out, int at) {
        int iv = across.cell(v);
        evaluateCell(from(iu, iv), x, t, across.local(iv, v), along.inverseWidth(iu), across.inverseWidth(iv),
                out, at);
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
        double g = yv * yv + zv * zv;
        double scale = 1 / Math.sqrt(nx * nx + g);
        double ny = zv * scale;
        double nz = -yv * scale;
        double e = 1 + yu * yu + zu * zu;
        double f = yu * yv + zu * zv;
        double l = -(yuu * ny + zuu * nz);
        double m = -(yuv * ny + zuv * nz);
        double n = -(yvv * ny + zvv * nz);
        double inverse = scale * scale;
        double mean = 0.5 * (e * n - 2 * f * m + g * l) * inverse;
        double half = Math.sqrt(Math.max(0, mean * mean - (l * n - m * m) * inverse));
        double outward = 1 / yv;
        out[at] = x;
        out[at + Y] = y;
        out[at + Z] = z;
        out[at + NX] = nx * scale;
        out[at + NY] = ny;
        out[at + NZ] = nz;
        out[at + K1] = mean + half;
        out[at + K2] = mean - half;
        out[at + DZ_DY] = zv * outward;
        out[at + DZ_DX] = zu - zv * yu * outward;
    }

    /** See {@link Panel#differentiate}. */
    void differentiate(double x, double v, double[] out, int at) {
        int iu = along.cell(x);
        int iv = across.cell(v);
        double t = along.local(iu, x);
        double s = across.local(iv, v);
        differentiate(cellY, from(iu, iv), t, s, along.inverseWidth(iu), across.inverseWidth(iv), out, at);
        differentiate(cellZ, from(iu, iv), t, s, along.inverseWidth(iu), across.inverseWidth(iv), out, at + 1);
    }

    /** Value, along, across, then the second derivatives of one coordinate, in every other place of out. */
    private static void differentiate(double[] a, int from, double t, double s, double ru, double rv,
                                      double[] out, int at) {
        double p1 = cubic(a, from + 4, t);
        double p2 = cubic(a, from + 8, t);
        double p3 = cubic(a, from + 12, t);
        out[at] = ((p3 * s + p2) * s + p1) * s + cubic(a, from, t);
        out[at + 2] = (((slope(a, from + 12, t) * s + slope(a, from + 8, t)) * s + slope(a, from + 4, t)) * s
                + slope(a, from, t)) * ru;
        out[at + 4] = ((3 * p3 * s + 2 * p2) * s + p1) * rv;
        out[at + 6] = second(a, from, t, s) * ru * ru;
        out[at + 8] = ((3 * slope(a, from + 12, t) * s + 2 * slope(a, from + 8, t)) * s + slope(a, from + 4, t))
                * ru * rv;
        out[at + 10] = (6 * p3 * s + 2 * p2) * rv * rv;
    }

    private static double slope(double[] a, int at, double t) {
        return (3 * a[at + 3] * t + 2 * a[at + 2]) * t + a[at + 1];
    }

    private static double second(double[] a, int from, double t, double s) {
        double q0 = 6 * a[from + 3] * t + 2 * a[from + 2];
        double q1 = 6 * a[from + 7] * t + 2 * a[from + 6];
        double q2 = 6 * a[from + 11] * t + 2 * a[from + 10];
        double q3 = 6 * a[from + 15] * t + 2 * a[from + 14];
        return ((q3 * s + q2) * s + q1) * s + q0;
    }

    /** Height at v across, at a place t in a cell along [m]. */
    double height(int iu, double t, double v) {
        int iv = across.cell(v);
        int from = from(iu, iv);
        double s = across.local(iv, v);
        return ((cubic(cellZ, from + 12, t) * s + cubic(cellZ, from + 8, t)) * s + cubic(cellZ, from + 4, t)) * s
                + cubic(cellZ, from, t);
    }

    /** v of the lowest place with half-breadth y, at a place t in a cell along; NaN where there is none. */
    double acrossAt(int iu, double t, double y) {
        return spreads[iu] ? onlyAcrossAt(iu, t, y) : lowestAcrossAt(iu, t, y);
    }

    /**
     * Where half-breadth rises all the way: walks to the cell from a straight-line guess, then Newton's
     * method inside it, kept in the cell by bisection.
     */
    private double onlyAcrossAt(int iu, double t, double y) {
        int nv = across.cells();
        int row = from(iu, 0);
        double low = cubic(cellY, row, t);
        double high = cellEnd(row + (nv - 1) * 16, t);
        if (!(y >= low - EDGE && y <= high + EDGE)) {
            return Double.NaN;
        }
        double guess = high > low ? (y - low) / (high - low) : 0;
        int iv = across.cell(Math.min(1, Math.max(0, guess)));
        while (iv > 0 && y < cubic(cellY, row + iv * 16, t)) {
            iv--;
        }
        while (iv < nv - 1 && y > cellEnd(row + iv * 16, t)) {
            iv++;
        }
        int from = row + iv * 16;
        return across.parameter(iv, MonotoneCubic.root(cubic(cellY, from, t) - y, cubic(cellY, from + 4, t),
                cubic(cellY, from + 8, t), cubic(cellY, from + 12, t), 0, 1));
    }

    private double cellEnd(int from, double t) {
        return cubic(cellY, from, t) + cubic(cellY, from + 4, t) + cubic(cellY, from + 8, t)
                + cubic(cellY, from + 12, t);
    }

    /** Where half-breadth turns back: every cell that can hold y, in stretches that rise or fall. */
    private double lowestAcrossAt(int iu, double t, double y) {
        double lowest = Double.POSITIVE_INFINITY;
        double found = Double.NaN;
        for (int iv = 0; iv < across.cells(); iv++) {
            int from = from(iu, iv);
            double c0 = cubic(cellY, from, t) - y;
            double c1 = cubic(cellY, from + 4, t);
            double c2 = cubic(cellY, from + 8, t);
            double c3 = cubic(cellY, from + 12, t);
            double start = 0;
            while (start < 1) {
                double end = MonotoneCubic.turn(c1, c2, c3, start);
                double s = MonotoneCubic.crossing(c0, c1, c2, c3, start, end, EDGE);
                if (s == s) {
                    double z = ((cubic(cellZ, from + 12, t) * s + cubic(cellZ, from + 8, t)) * s
                            + cubic(cellZ, from + 4, t)) * s + cubic(cellZ, from, t);
                    if (z < lowest) {
                        lowest = z;
                        found = across.parameter(iv, s);
                    }
                }
                start = end;
            }
        }
        return found;
    }

    /**
     * Lowers heights to this panel's where it lies lower or they are NaN, at the half-breadths 0, step,
     * 2 step … [m].
     */
    void lowerHeights(double x, double step, double[] out, int at, int count) {
        int iu = along.cell(x);
        double t = along.local(iu, x);
        if (spreads[iu]) {
            lowerRisingHeights(iu, t, step, out, at, count);
            return;
        }
        for (int i = 0; i < count; i++) {
            double v = lowestAcrossAt(iu, t, i * step);
            if (v == v) {
                lower(out, at + i, height(iu, t, v));
            }
        }
    }

    private void lowerRisingHeights(int iu, double t, double step, double[] out, int at, int count) {
        int row = from(iu, 0);
        int i = (int) Math.max(0, Math.ceil((cubic(cellY, row, t) - EDGE) / step));
        for (int iv = 0; iv < across.cells(); iv++) {
            int from = row + iv * 16;
            double end = cellEnd(from, t) + (iv == across.cells() - 1 ? EDGE : 0);
            double c0 = cubic(cellY, from, t);
            double c1 = cubic(cellY, from + 4, t);
            double c2 = cubic(cellY, from + 8, t);
            double c3 = cubic(cellY, from + 12, t);
            double z0 = cubic(cellZ, from, t);
            double z1 = cubic(cellZ, from + 4, t);
            double z2 = cubic(cellZ, from + 8, t);
            double z3 = cubic(cellZ, from + 12, t);
            for (; i < count && i * step <= end; i++) {
                double s = MonotoneCubic.root(c0 - i * step, c1, c2, c3, 0, 1);
                lower(out, at + i, ((z3 * s + z2) * s + z1) * s + z0);
            }
        }
    }

    private static void lower(double[] out, int at, double z) {
        out[at] = z >= out[at] ? out[at] : z;
    }
}
