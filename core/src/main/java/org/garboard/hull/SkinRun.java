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
    private static final int MOST_THIRDS = 80;
    /** So near its end a run is at a half-breadth: what the skin may miss the stem by [m]. */
    private static final double ON_STEM = 2e-6;

    SkinRun(Panel panel, double x, double from, double to) {
        this(panel, new PanelSection(panel, x), x, from, to);
    }

    /** The runs of a panel at x, from its lower line to its upper. */
    static List<SkinRun> of(Panel panel, double x) {
        List<SkinRun> runs = new ArrayList<>();
        if (!(x >= panel.knotsAlong().start() && x <= panel.knotsAlong().end())) {
            return runs;
        }
        if (x > panel.fore().most() && x <= panel.aft().least()) {
            runs.add(new SkinRun(panel, x, 0, 1));
            return runs;
        }
        PanelSection section = new PanelSection(panel, x);
        Looks looks = Looks.of(panel, section, x);
        double start = looks.skin[0] ? 0 : Double.NaN;
        for (int i = 1; i < looks.count; i++) {
            if (looks.skin[i] != (start == start)) {
                double edge = edge(panel, section, x, looks.v[i - 1], looks.v[i]);
                if (looks.skin[i]) {
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

    /** Even looks in every cell, and the places between where the section comes nearest to a face that it may just touch. */
    private static final class Looks {
        private final double[] v;
        private final boolean[] skin;
        private int count;

        private Looks(int most) {
            this.v = new double[most];
            this.skin = new boolean[most];
        }

        static Looks of(Panel panel, PanelSection section, double x) {
            int even = LOOKS_PER_CELL * panel.knotsAcross().cells();
            Looks looks = new Looks(2 * even + 1);
            double before = Double.NaN;
            double last = Double.NaN;
            for (int i = 0; i <= even; i++) {
                double v = look(panel, i);
                double y = section.value(Coordinate.Y, v);
                double z = section.value(Coordinate.Z, v);
                double margin = margin(panel, x, y, z);
                if (i > 1 && (last - before) * last < 0 && (last - margin) * last < 0) {
                    looks.addNearest(panel, section, x, nearest(panel, section, x, look(panel, i - 2), v, last));
                }
                looks.add(v, panel.isSkin(x, y, z));
                before = last;
                last = margin;
            }
            return looks;
        }

        private void add(double place, boolean isSkin) {
            v[count] = place;
            skin[count++] = isSkin;
        }

        /** On either side of the last look. */
        private void addNearest(Panel panel, PanelSection section, double x, double place) {
            double last = v[count - 1];
            if (place < last) {
                boolean wasSkin = skin[--count];
                add(place, SkinRun.isSkin(panel, section, x, place));
                add(last, wasSkin);
            } else if (place > last) {
                add(place, SkinRun.isSkin(panel, section, x, place));
            }
        }
    }

    /** How far from the nearer face, positive on skin [m]. */
    private static double margin(Panel panel, PanelSection section, double x, double v) {
        return margin(panel, x, section.value(Coordinate.Y, v), section.value(Coordinate.Z, v));
    }

    private static double margin(Panel panel, double x, double y, double z) {
        double abaft = x > panel.fore().most() ? Double.POSITIVE_INFINITY : x - panel.fore().x(y, z);
        double ahead = x <= panel.aft().least() ? Double.POSITIVE_INFINITY : panel.aft().x(y, z) - x;
        return Math.min(abaft, ahead);
    }

    /** By thirds, until its margin has the other sign or the stretch is nothing. */
    private static double nearest(Panel panel, PanelSection section, double x, double from, double to, double margin) {
        double low = from;
        double high = to;
        for (int i = 0; i < MOST_THIRDS; i++) {
            double one = low + (high - low) / 3;
            double other = high - (high - low) / 3;
            double atOne = margin(panel, section, x, one);
            double atOther = margin(panel, section, x, other);
            if (atOne * margin < 0 || atOther * margin < 0) {
                return atOne * margin < 0 ? one : other;
            }
            if (Math.abs(atOne) > Math.abs(atOther)) {
                low = one;
            } else {
                high = other;
            }
        }
        return 0.5 * (low + high);
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
        if (panel.isAtStem(x)) {
            return acrossAtStem(side);
        }
        CellIndex along = panel.cells().along();
        int cell = along.cell(x);
        double v = panel.cells().acrossAt(cell, along.local(cell, x), side);
        return v >= from - 1e-12 && v <= to + 1e-12 ? Math.min(to, Math.max(from, v)) : Double.NaN;
    }

    /** Forward of the stem's foot the panel is drawn on past the stem, and crosses the centreline there again. */
    private double acrossAtStem(double side) {
        double lowest = Double.NaN;
        for (double v : section.crossings(Coordinate.Y, side)) {
            lowest = v >= from && v <= to && (Double.isNaN(lowest) || z(v) < z(lowest)) ? v : lowest;
        }
        for (double v : new double[] {from, to}) {
            boolean there = Math.abs(y(v) - side) <= ON_STEM;
            lowest = there && (Double.isNaN(lowest) || z(v) < z(lowest)) ? v : lowest;
        }
        return lowest;
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
