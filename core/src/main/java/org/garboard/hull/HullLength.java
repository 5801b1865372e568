package org.garboard.hull;

import java.util.Arrays;
import java.util.List;
import org.garboard.geometry.KnotVector;

/**
 * One length of the hull, from bow, step to step, transom: panels lofted from stations of its own, ending at
 * faces. A hull without steps has one.
 */
final class HullLength {
    /** Two panels this near at a knuckle are at one height, and the inboard one answers [m]. */
    private static final double SAME_HEIGHT = 1e-9;

    private static final int LOOKS_PER_CELL = 8;

    private final List<Panel> panels;
    private final PanelCells[] cells;
    private final CellIndex along;
    private final EndFace aft;
    /** As far as this every place is skin of this length, as far as the next some are [m]. */
    private final double wholeTo;
    private final double to;
    /** As far as this the stem may cut a section [m]. */
    private final double stemTo;

    HullLength(List<Panel> panels) {
        this.panels = List.copyOf(panels);
        this.cells = panels.stream().map(Panel::cells).toArray(PanelCells[]::new);
        this.along = cells[0].along();
        this.aft = panels.get(0).aft();
        this.wholeTo = aft.least();
        this.to = aft.most();
        this.stemTo = panels.get(0).fore() instanceof StemFace stem ? stem.most() : Double.NEGATIVE_INFINITY;
    }

    List<Panel> panels() {
        return panels;
    }

    /** Whether the stem cuts a section at x. */
    boolean isAtStem(double x) {
        return x < stemTo;
    }

    /** The foremost x of its skin [m]. */
    double begin() {
        return panels.get(0).fore() instanceof StemFace stem ? stem.foremost() : panels.get(0).knotsAlong().start();
    }

    /** Whether a place in plan that no length forward of this one has lies on it or forward of it. */
    boolean reaches(double x, double side) {
        return x <= wholeTo || x <= to && !(aft instanceof PlanFace plan && x > plan.x(side));
    }

    /** The aftermost x of its skin [m]. */
    double end() {
        double most = Double.NEGATIVE_INFINITY;
        for (Panel panel : panels) {
            KnotVector across = panel.knotsAcross();
            for (int i = 0; i <= LOOKS_PER_CELL * across.cells(); i++) {
                int cell = Math.min(i / LOOKS_PER_CELL, across.cells() - 1);
                double width = across.cellStart(cell + 1) - across.cellStart(cell);
                most = Math.max(most, panel.to(across.cellStart(cell) + width * (i - LOOKS_PER_CELL * cell) / LOOKS_PER_CELL));
            }
        }
        return most;
    }

    /** Whether any skin of this length may lie at x, where forward lengths have none. */
    boolean reaches(double x) {
        return x <= to;
    }

    /** Whether no face cuts a section at x, where forward lengths have none. */
    boolean isWhole(double x) {
        return x <= wholeTo && x > panels.get(0).fore().most();
    }

    boolean evaluate(double x, double y, double[] out, int at) {
        int cell = along.cell(x);
        double t = along.local(cell, x);
        double side = Math.abs(y);
        PanelCells best = null;
        double bestV = 0;
        for (int p = 0; p < cells.length; p++) {
            double v = cells[p].acrossAt(cell, t, side);
            if (v == v && (x <= wholeTo || x <= aft.x(side, cells[p].height(cell, t, v))) && (best == null
                    || cells[p].height(cell, t, v) < best.height(cell, t, bestV) - SAME_HEIGHT)) {
                best = cells[p];
                bestV = v;
            }
        }
        if (best == null) {
            return false;
        }
        best.evaluate(x, cell, t, bestV, out, at);
        if (y < 0) {
            out[at + Panel.Y] = y;
            out[at + Panel.NY] = -out[at + Panel.NY];
        }
        return true;
    }

    double height(double x, double side) {
        int cell = along.cell(x);
        double t = along.local(cell, x);
        double lowest = Double.NaN;
        for (int p = 0; p < cells.length; p++) {
            double v = cells[p].acrossAt(cell, t, side);
            if (v == v) {
                double z = cells[p].height(cell, t, v);
                lowest = z >= lowest || x > wholeTo && x > aft.x(side, z) ? lowest : z;
            }
        }
        return lowest;
    }

    /** At a section that no face cuts. */
    void heights(double x, double step, double[] out, int at, int count) {
        Arrays.fill(out, at, at + count, Double.NaN);
        for (PanelCells panel : cells) {
            panel.lowerHeights(x, step, out, at, count);
        }
    }
}
