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
}
