package org.garboard.siting;

import java.util.List;
import org.garboard.craft.Sides;
import org.garboard.mount.Mount;

/**
 * How well every node of a grid serves one mount, and what decides there. Hull frame, metres. Of a mount athwart the keel there is
 * one column of nodes, on the keel line; of one behind the transom one row, along its lower edge.
 */
public final class UtilisationMap {
    private final Mount mount;
    private final Sides side;
    private final BottomGrid grid;
    private final double[] alongTransom;
    private final Suitability suitability;
    private final List<String> checks;

    /** @param alongTransom x of the one row; empty where rows are those of the grid */
    UtilisationMap(Mount mount, Sides side, BottomGrid grid, double[] alongTransom, Suitability suitability, List<String> checks) {
        this.mount = mount;
        this.side = side;
        this.grid = grid;
        this.alongTransom = alongTransom;
        this.suitability = suitability;
        this.checks = List.copyOf(checks);
    }

    public Mount mount() {
        return mount;
    }

    /** BOTH where port mirrors starboard. */
    public Sides side() {
        return side;
    }

    /** Side of a cell [m]. */
    public double step() {
        return grid.step();
    }

    public int rows() {
        return suitability.size() / suitability.columns();
    }

    public int columns() {
        return suitability.columns();
    }

    public double x(int row) {
        return alongTransom.length > 0 ? alongTransom[row] : grid.x(row);
    }

    /** Half-breadth [m], whatever the side. */
    public double y(int column) {
        return grid.y(column);
    }

    /** Governing utilisation: met where at most 1; infinite where something fails outright, or cannot be read where it must be; NaN where the mount finds no seat. */
    public double utilisation(int row, int column) {
        int node = row * suitability.columns() + column;
        return suitability.measured(node) ? suitability.utilisation(node) : Double.NaN;
    }

    /** Number in {@link #checks} of what governs; -1 where the mount is refused wherever it is put, or finds no seat. */
    public int governing(int row, int column) {
        return suitability.governing(row * suitability.columns() + column);
    }

    /** Names of what is asked of every place. */
    public List<String> checks() {
        return checks;
    }
}
