package org.garboard.hull;

import org.garboard.geometry.KnotVector;

/** Finds the cell of a parameter without searching: even buckets that name the first cell to try. */
final class CellIndex {
    private static final int BUCKETS_PER_CELL = 8;

    private final double start;
    private final double scale;
    private final int[] first;
    private final double[] bounds;
    private final double[] inverseWidths;

    CellIndex(KnotVector knots) {
        int cells = knots.cells();
        bounds = new double[cells + 1];
        for (int i = 0; i <= cells; i++) {
            bounds[i] = knots.cellStart(i);
        }
        inverseWidths = new double[cells];
        for (int i = 0; i < cells; i++) {
            inverseWidths[i] = 1 / (bounds[i + 1] - bounds[i]);
        }
        start = bounds[0];
        first = new int[cells * BUCKETS_PER_CELL];
        scale = first.length / (bounds[cells] - start);
        for (int i = 0; i < first.length; i++) {
            first[i] = knots.cell(start + i / scale);
        }
    }

    int cells() {
        return bounds.length - 1;
    }

    double bound(int i) {
        return bounds[i];
    }

    double inverseWidth(int cell) {
        return inverseWidths[cell];
    }

    /** A parameter as a share of its cell, 0 to 1. */
    double local(int cell, double t) {
        return (t - bounds[cell]) * inverseWidths[cell];
    }

    /** The parameter at a share of a cell. */
    double parameter(int cell, double share) {
        return bounds[cell] + share * (bounds[cell + 1] - bounds[cell]);
    }

    int cell(double t) {
        int bucket = (int) ((t - start) * scale);
        int cell = first[bucket < 0 ? 0 : Math.min(bucket, first.length - 1)];
        while (cell > 0 && t < bounds[cell]) {
            cell--;
        }
        while (cell < bounds.length - 2 && t >= bounds[cell + 1]) {
            cell++;
        }
        return cell;
    }
}
