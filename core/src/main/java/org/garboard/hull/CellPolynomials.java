package org.garboard.hull;

import org.garboard.geometry.KnotVector;

/** A bicubic B-spline written out as one polynomial per cell. */
final class CellPolynomials {

    private CellPolynomials() {
    }

    /**
     * Powers of the cell's own parameters t along and s across, both 0 to 1 in the cell.
     *
     * @return {@code [(cellAlong * cellsAcross + cellAcross) * 16 + powerOfS * 4 + powerOfT]}
     */
    static double[] of(KnotVector along, KnotVector across, double[] poles) {
        int nu = along.cells();
        int nv = across.cells();
        double[] cells = new double[nu * nv * 16];
        for (int iu = 0; iu < nu; iu++) {
            double[] factorsU = taylor(along, iu);
            for (int iv = 0; iv < nv; iv++) {
                double[] factorsV = taylor(across, iv);
                fill(cells, (iu * nv + iv) * 16, factorsU, factorsV, poles, iu * across.size() + iv, across.size());
            }
        }
        return cells;
    }

    private static void fill(double[] cells, int at, double[] factorsU, double[] factorsV,
                             double[] poles, int corner, int stride) {
        for (int b = 0; b < 4; b++) {
            for (int a = 0; a < 4; a++) {
                double sum = 0;
                for (int i = 0; i < 4; i++) {
                    for (int k = 0; k < 4; k++) {
                        sum += factorsU[a * 4 + i] * factorsV[b * 4 + k] * poles[corner + i * stride + k];
                    }
                }
                cells[at + b * 4 + a] = sum;
            }
        }
    }

    private static double[] taylor(KnotVector knots, int cell) {
        double start = knots.cellStart(cell);
        double width = knots.cellStart(cell + 1) - start;
        double[] factors = new double[16];
        knots.basis(cell, start, factors);
        double scale = 1;
        for (int order = 1; order < 4; order++) {
            scale *= width / order;
            for (int i = 0; i < 4; i++) {
                factors[order * 4 + i] *= scale;
            }
        }
        return factors;
    }

    /** The knots with one more cell of width 1 beyond each end. */
    static KnotVector withMargins(KnotVector across) {
        double[] inner = new double[across.cells() + 1];
        for (int i = 0; i < inner.length; i++) {
            inner[i] = across.cellStart(i);
        }
        return KnotVector.clamped(across.start() - 1, across.end() + 1, inner);
    }

    /**
     * The cells with one more beyond each edge, in which the edge's own value, slope and curvature across go
     * on; the cubic term does not, which far out is the rounding of the table and little else.
     */
    static double[] withMargins(double[] cells, CellIndex across) {
        int nv = across.cells();
        int rows = cells.length / (16 * nv);
        double[] wider = new double[rows * (nv + 2) * 16];
        for (int row = 0; row < rows; row++) {
            int from = row * nv * 16;
            int to = row * (nv + 2) * 16;
            System.arraycopy(cells, from, wider, to + 16, nv * 16);
            belowFirst(cells, from, across.inverseWidth(0), wider, to);
            aboveLast(cells, from + (nv - 1) * 16, across.inverseWidth(nv - 1), wider, to + (nv + 1) * 16);
        }
        return wider;
    }

    /** c0 + c1 v + c2 v^2 in powers of s = v + 1. */
    private static void belowFirst(double[] cells, int from, double inverse, double[] to, int at) {
        for (int a = 0; a < 4; a++) {
            double c1 = cells[from + 4 + a] * inverse;
            double c2 = cells[from + 8 + a] * inverse * inverse;
            to[at + a] = cells[from + a] - c1 + c2;
            to[at + 4 + a] = c1 - 2 * c2;
            to[at + 8 + a] = c2;
        }
    }

    /** Value, slope and half the second derivative at the cell's end. */
    private static void aboveLast(double[] cells, int from, double inverse, double[] to, int at) {
        for (int a = 0; a < 4; a++) {
            double b1 = cells[from + 4 + a];
            double b2 = cells[from + 8 + a];
            double b3 = cells[from + 12 + a];
            to[at + a] = cells[from + a] + b1 + b2 + b3;
            to[at + 4 + a] = (b1 + 2 * b2 + 3 * b3) * inverse;
            to[at + 8 + a] = (b2 + 3 * b3) * inverse * inverse;
        }
    }
}
