package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.geometry.GaussRule;

/** One panel cut at one x: a cubic in v for y and for z in every cell across. */
public final class PanelSection {
    /** Coordinate of a section's point. */
    public enum Coordinate { Y, Z }

    private static final GaussRule RULE = GaussRule.of(5);
    private static final int SCAN = 8;

    private final double x;
    private final CellIndex cells;
    private final double[] cubics;

    /** @param x within the panel [m] */
    public PanelSection(Panel panel, double x) {
        this.x = x;
        this.cells = panel.cells().across();
        this.cubics = new double[cells.cells() * 8];
        panel.cells().section(x, cubics);
    }

    private int at(int cell, Coordinate coordinate) {
        return cell * 8 + (coordinate == Coordinate.Y ? 0 : 4);
    }

    /** Half-breadth or height at v [m]. */
    public double value(Coordinate coordinate, double v) {
        int cell = cells.cell(v);
        return PanelCells.cubic(cubics, at(cell, coordinate), cells.local(cell, v));
    }

    private static double slope(double[] a, int at, double s) {
        return (3 * a[at + 3] * s + 2 * a[at + 2]) * s + a[at + 1];
    }

    /** Every v, rising, at which a coordinate has a value [m]; places that only touch it may be missed. */
    List<Double> crossings(Coordinate coordinate, double value) {
        List<Double> found = new ArrayList<>();
        for (int cell = 0; cell < cells.cells(); cell++) {
            int at = at(cell, coordinate);
            double before = PanelCells.cubic(cubics, at, 0) - value;
            if (cell == 0 && Math.abs(before) < 1e-9) {
                found.add(0.0);
            }
            for (int i = 1; i <= SCAN; i++) {
                double after = PanelCells.cubic(cubics, at, (double) i / SCAN) - value;
                boolean last = cell == cells.cells() - 1 && i == SCAN;
                if (last && Math.abs(after) < 1e-9) {
                    found.add(1.0);
                } else if (before < 0 != after < 0) {
                    found.add(cells.parameter(cell, bisect(at, value, (i - 1.0) / SCAN, (double) i / SCAN)));
                }
                before = after;
            }
        }
        return found;
    }

    private double bisect(int at, double value, double from, double to) {
        boolean rising = PanelCells.cubic(cubics, at, from) < value;
        double low = from;
        double high = to;
        for (int i = 0; i < 50; i++) {
            double middle = 0.5 * (low + high);
            if (PanelCells.cubic(cubics, at, middle) < value == rising) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return 0.5 * (low + high);
    }

    /** Length along the section from the lower line to v [m]. */
    public double girthTo(double v) {
        double sum = 0;
        int last = cells.cell(v);
        for (int cell = 0; cell <= last; cell++) {
            double end = cell == last ? cells.local(cell, v) : 1;
            for (int i = 0; i < RULE.size(); i++) {
                double s = end * RULE.at(i);
                sum += end * RULE.weight(i) * Math.hypot(
                        slope(cubics, at(cell, Coordinate.Y), s), slope(cubics, at(cell, Coordinate.Z), s));
            }
        }
        return sum;
    }

    /** Points from the lower line to the upper, their chords within a distance [m] of the curve. */
    List<Vector3D> points(double chord) {
        return places(chord).stream()
            .map(v -> Vector3D.of(x, value(Coordinate.Y, v), value(Coordinate.Z, v))).toList();
    }

    /** v of such points, rising from 0 to 1. */
    public List<Double> places(double chord) {
        List<Double> places = new ArrayList<>();
        places.add(0.0);
        for (int cell = 0; cell < cells.cells(); cell++) {
            int pieces = pieces(cell, chord);
            for (int i = 1; i <= pieces; i++) {
                places.add(i == pieces ? cells.bound(cell + 1) : cells.parameter(cell, (double) i / pieces));
            }
        }
        return places;
    }

    /** Chord error of n equal pieces of a curve is at most max|C''| / (8 n^2). */
    private int pieces(int cell, double chord) {
        double bend = Math.max(bend(cell, 0), bend(cell, 1));
        return Math.max(1, (int) Math.ceil(Math.sqrt(bend / (8 * chord))));
    }

    private double bend(int cell, double s) {
        int y = at(cell, Coordinate.Y);
        int z = at(cell, Coordinate.Z);
        return Math.hypot(6 * cubics[y + 3] * s + 2 * cubics[y + 2], 6 * cubics[z + 3] * s + 2 * cubics[z + 2]);
    }
}
