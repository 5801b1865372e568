package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.PanelSection.Coordinate;

/**
 * An unbroken run of skin on one panel in a section.
 *
 * @param panel it lies on
 * @param section the panel's section
 * @param x of the section [m]
 * @param from v at which it begins
 * @param to v at which it ends
 */
public record SkinRun(Panel panel, PanelSection section, double x, double from, double to) {
    private static final int LOOKS_PER_CELL = 16;

    SkinRun(Panel panel, double x, double from, double to) {
        this(panel, new PanelSection(panel, x), x, from, to);
    }

    /** The runs of a panel at x, from its lower line to its upper. */
    static List<SkinRun> of(Panel panel, double x) {
        List<SkinRun> runs = new ArrayList<>();
        if (!(x >= panel.knotsAlong().start() && x <= panel.knotsAlong().end())) {
            return runs;
        }
        PanelSection section = new PanelSection(panel, x);
        int looks = LOOKS_PER_CELL * panel.knotsAcross().cells();
        double start = isSkin(panel, section, x, 0) ? 0 : Double.NaN;
        for (int i = 1; i <= looks; i++) {
            double before = look(panel, i - 1);
            double after = look(panel, i);
            boolean skin = isSkin(panel, section, x, after);
            if (skin != (start == start)) {
                double edge = edge(panel, section, x, before, after);
                if (skin) {
                    start = edge;
                } else {
                    add(runs, new SkinRun(panel, section, x, start, edge));
                    start = Double.NaN;
                }
            }
        }
        if (start == start) {
            add(runs, new SkinRun(panel, section, x, start, 1));
        }
        return runs;
    }

    private static void add(List<SkinRun> runs, SkinRun run) {
        if (run.to > run.from) {
            runs.add(run);
        }
    }

    private static double look(Panel panel, int i) {
        int cell = Math.min(i / LOOKS_PER_CELL, panel.knotsAcross().cells() - 1);
        double start = panel.knotsAcross().cellStart(cell);
        return start + (panel.knotsAcross().cellStart(cell + 1) - start) * (i - cell * LOOKS_PER_CELL) / LOOKS_PER_CELL;
    }

    private static boolean isSkin(Panel panel, PanelSection section, double x, double v) {
        return panel.isSkin(x, section.value(Coordinate.Y, v), section.value(Coordinate.Z, v));
    }

    /** Bisects to the last bit, and ends on the side that is skin. */
    private static double edge(Panel panel, PanelSection section, double x, double one, double other) {
        double skin = isSkin(panel, section, x, one) ? one : other;
        double off = skin == one ? other : one;
        for (double middle = 0.5 * (skin + off); middle != skin && middle != off; middle = 0.5 * (skin + off)) {
            if (isSkin(panel, section, x, middle)) {
                skin = middle;
            } else {
                off = middle;
            }
        }
        return skin;
    }

    /** Half-breadth at v [m]. */
    public double y(double v) {
        return section.value(Coordinate.Y, v);
    }

    /** Height at v [m]. */
    public double z(double v) {
        return section.value(Coordinate.Z, v);
    }

    /** Length along the skin from where the run begins to v [m]. */
    public double girthTo(double v) {
        return section.girthTo(v) - (from > 0 ? section.girthTo(from) : 0);
    }

    /** Straight from its end to where the next begins [m]: over the face of a step, or nothing. */
    public double gapTo(SkinRun next) {
        return Math.hypot(next.y(next.from) - y(to), next.z(next.from) - z(to));
    }

    double middle() {
        return y(0.5 * (from + to));
    }

    /** v of the lowest place with a half-breadth, NaN where the run has none. */
    double across(double side) {
        CellIndex along = panel.cells().along();
        int cell = along.cell(x);
        double v = panel.cells().acrossAt(cell, along.local(cell, x), side);
        return v >= from - 1e-12 && v <= to + 1e-12 ? Math.min(to, Math.max(from, v)) : Double.NaN;
    }

    /** v of points whose chords keep within a distance [m] of the skin, rising. */
    public List<Double> places(double chord) {
        List<Double> places = new ArrayList<>();
        places.add(from);
        section.places(chord).stream().filter(v -> v > from && v < to).forEach(places::add);
        places.add(to);
        return places;
    }

    List<Vector3D> points(double chord) {
        return places(chord).stream().map(v -> Vector3D.of(x, y(v), z(v))).toList();
    }
}
