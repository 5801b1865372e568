package org.garboard.hull;

import java.util.Arrays;
import org.garboard.geometry.KnotVector;

/**
 * The unknown poles of a spline over station index (along) and v (across), numbered along first, and the
 * band matrices over them. Columns at the two edges are left out where the edges are held.
 */
final class PoleNet {
    private final KnotVector along;
    private final KnotVector across;
    private final int firstColumn;
    private final int columns;
    private final int halfWidth;
    private final double[] basisU = new double[16];
    private final double[] basisV = new double[16];

    private PoleNet(KnotVector along, KnotVector across, int heldColumns) {
        this.along = along;
        this.across = across;
        this.firstColumn = heldColumns;
        this.columns = across.size() - 2 * heldColumns;
        this.halfWidth = Math.min(size() - 1, 3 * columns + 4);
    }

    static PoleNet withHeldEdges(KnotVector along, KnotVector across) {
        return new PoleNet(along, across, 1);
    }

    static PoleNet withFreeEdges(KnotVector along, KnotVector across) {
        return new PoleNet(along, across, 0);
    }

    /** Number of unknowns. */
    int size() {
        return along.size() * columns;
    }

    int halfWidth() {
        return halfWidth;
    }

    /** The spline's value at (u, v) as factors of the unknowns. */
    Observation observation(double u, double v, double value, double weight) {
        int cellU = along.cell(u);
        int cellV = across.cell(v);
        along.basis(cellU, u, basisU);
        across.basis(cellV, v, basisV);
        int[] unknowns = new int[16];
        double[] factors = new double[16];
        int count = 0;
        for (int i = 0; i < 4; i++) {
            for (int k = 0; k < 4; k++) {
                int column = cellV + k - firstColumn;
                if (column >= 0 && column < columns) {
                    unknowns[count] = (cellU + i) * columns + column;
                    factors[count++] = basisU[i] * basisV[k];
                }
            }
        }
        return new Observation(Arrays.copyOf(unknowns, count), Arrays.copyOf(factors, count), value, weight);
    }

    double[] emptyBand() {
        return new double[size() * (halfWidth + 1)];
    }

    /** Adds weight times the product of a measure along, of derivatives, and one across, of derivatives or jumps. */
    void addProduct(double[] band, double weight, double[][] measureAlong, double[][] measureAcross) {
        for (int i = 0; i < along.size(); i++) {
            for (int j = Math.max(0, i - 3); j <= i; j++) {
                double factor = weight * measureAlong[i][j];
                for (int k = 0; k < columns && factor != 0; k++) {
                    int row = i * columns + k;
                    for (int l = Math.max(0, k - 4); l <= Math.min(columns - 1, k + 4); l++) {
                        int column = j * columns + l;
                        if (column <= row) {
                            band[row * (halfWidth + 1) + column - row + halfWidth] +=
                                    factor * measureAcross[k + firstColumn][l + firstColumn];
                        }
                    }
                }
            }
        }
    }

    /** Slope across, dw/dv, of a section given by its poles. */
    double slope(double[] sectionPoles, double v) {
        int cell = across.cell(v);
        across.basis(cell, v, basisV);
        double sum = 0;
        for (int k = 0; k < 4; k++) {
            sum += basisV[4 + k] * sectionPoles[cell + k];
        }
        return sum;
    }

    /** Poles across at station index u, held edges 0: from a solution. */
    double[] sectionPoles(double[] solution, double u) {
        int cellU = along.cell(u);
        along.basis(cellU, u, basisU);
        double[] poles = new double[across.size()];
        for (int k = 0; k < columns; k++) {
            for (int i = 0; i < 4; i++) {
                poles[k + firstColumn] += basisU[i] * solution[(cellU + i) * columns + k];
            }
        }
        return poles;
    }
}
