package org.garboard.siting;

import java.util.Arrays;
import java.util.function.DoubleBinaryOperator;
import org.garboard.hull.Hull;
import org.garboard.processors.Rows;

/**
 * Heights of the bottom at the nodes of a square grid in plan, starboard from the keel line to the
 * bottom's edge. Nodes lie at whole multiples of the step in the hull frame, so that the same boat
 * has the same nodes wherever its table begins.
 */
final class BottomGrid {
    private final double step;
    private final double perStep;
    private final int firstRow;
    private final int rows;
    private final int columns;
    private final double[] z;

    private BottomGrid(double step, int firstRow, int rows, int columns) {
        this.step = step;
        this.perStep = 1 / step;
        this.firstRow = firstRow;
        this.rows = rows;
        this.columns = columns;
        this.z = new double[rows * columns];
        Arrays.fill(z, Double.NaN);
    }

    /** Reads the skin at every node. */
    static BottomGrid read(Hull hull, BottomLines lines, double step) {
        int first = (int) Math.ceil(lines.forwardEnd() / step - 1e-9);
        int last = (int) Math.floor(lines.afterEnd() / step + 1e-9);
        int columns = 2 + (int) Math.floor(lines.edge().largestY() / step);
        BottomGrid grid = new BottomGrid(step, first, Math.max(2, last - first + 1), columns);
        UnsureKeel unsure = UnsureKeel.of(hull);
        Rows.each(grid.rows, (from, to) -> grid.fill(hull, lines, unsure, from, to));
        return grid;
    }

    private void fill(Hull hull, BottomLines lines, UnsureKeel unsure, int from, int to) {
        for (int i = from; i < to; i++) {
            double x = x(i);
            double edge = lines.edge().y(x);
            // where the edge runs into the centreline its curve may dip a little beyond it
            int count = Math.max(0, Math.min(columns, 1 + (int) Math.floor(edge / step)));
            hull.heights(x, step, z, i * columns, count);
            int onKeel = hull.skinLine() == 0 ? 0 : Math.max(0, Math.min(count, (int) Math.ceil(lines.keel().y(x) / step - 1e-9)));
            int onUnsure = Math.min(count, (int) Math.floor(unsure.halfBreadth(x) / step + 1e-9) + 1);
            Arrays.fill(z, i * columns, i * columns + Math.max(onKeel, onUnsure), Double.NaN);
        }
    }

    int rows() {
        return rows;
    }

    int columns() {
        return columns;
    }

    int size() {
        return z.length;
    }

    double step() {
        return step;
    }

    /** x of the foremost row [m]. */
    double originX() {
        return firstRow * step;
    }

    double x(int row) {
        return (firstRow + row) * step;
    }

    double y(int column) {
        return column * step;
    }

    int nearestRow(double x) {
        return Math.max(0, Math.min(rows - 1, (int) Math.rint(x / step) - firstRow));
    }

    int nearestColumn(double y) {
        return Math.max(0, Math.min(columns - 1, (int) Math.rint(y / step)));
    }

    boolean onSkin(int row, int column) {
        return !Double.isNaN(z[row * columns + column]);
    }

    /**
     * The skin read off the grid: bilinear between nodes, which falls short of a bulge of radius R by
     * step squared / 4R at most; NaN next to nodes off the skin. Port mirrors starboard.
     */
    DoubleBinaryOperator skin() {
        return this::height;
    }

    private double height(double x, double y) {
        double u = x * perStep - firstRow;
        double v = Math.abs(y) * perStep;
        if (!(u >= 0 && u <= rows - 1 && v <= columns - 1)) {
            return Double.NaN;
        }
        int i = Math.min((int) u, rows - 2);
        int j = Math.min((int) v, columns - 2);
        double a = u - i;
        double b = v - j;
        int at = i * columns + j;
        double fore = z[at] + b * (z[at + 1] - z[at]);
        double aft = z[at + columns] + b * (z[at + columns + 1] - z[at + columns]);
        return fore + a * (aft - fore);
    }
}
