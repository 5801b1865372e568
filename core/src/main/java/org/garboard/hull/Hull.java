package org.garboard.hull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.PanelSection.Coordinate;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.SkinSurface;
import org.garboard.units.Angle;

/** The hull surface: panels between named lines, lofted through the stations. */
public final class Hull {
    /** Two panels this near at a knuckle are at one height, and the inboard one answers [m]. */
    private static final double SAME_HEIGHT = 1e-9;

    private final List<Panel> panels;
    private final List<HullLine> lines;
    private final double within;
    private final double forwardEnd;
    private final double afterEnd;

    Hull(List<HullLine> lines, List<Panel> panels, double within) {
        this.lines = List.copyOf(lines);
        this.panels = List.copyOf(panels);
        this.within = within;
        this.forwardEnd = panels.get(0).knotsAlong().start();
        this.afterEnd = panels.get(0).knotsAlong().end();
    }

    /**
     * The outside of the skin, where the surface that the table is drawn to passes through every point of it.
     *
     * @throws IllegalArgumentException if the table has faults that its checks would have named
     * @throws HullNotDrawn if the skin is too thick for its shape, or no surface keeps to the table
     */
    public static Hull through(HullOffsets table) {
        return outside(Loft.through(table), table.surface());
    }

    /**
     * The outside of the skin, where the surface that the table is drawn to is the fairest whose distance from
     * every reading, up or out as it is read, is at most half the table's least count; through the points
     * where the least count is 0, and where there are but two stations: lines between two are straight, and
     * nothing shows how fair they run.
     *
     * @throws IllegalArgumentException if the table has faults that its checks would have named
     * @throws HullNotDrawn if the skin is too thick for its shape, or no surface keeps to the table
     */
    public static Hull faired(HullOffsets table) {
        boolean fairs = table.leastCount() > 0 && table.stations().size() > 2;
        return outside(fairs ? Loft.within(table) : Loft.through(table), table.surface());
    }

    private static Hull outside(Hull drawn, SkinSurface surface) {
        double[] thickness = drawn.panels.stream().mapToDouble(panel -> surface.thickness(panel.name())).toArray();
        return Arrays.stream(thickness).allMatch(each -> each == 0) ? drawn : OutsideLoft.of(drawn, thickness);
    }

    /** Panels from the keel outward. */
    public List<Panel> panels() {
        return panels;
    }

    /** Named lines from keel to sheer: keel, flat keel's edge if any, chines, sheer. */
    public List<HullLine> lines() {
        return lines;
    }

    /** The keel line, first of {@link #lines()}. */
    public HullLine keel() {
        return lines.get(0);
    }

    /** The outer edge of the bottom: the last chine, or the sheer of a hull without chine. */
    public HullLine bottomEdge() {
        for (int i = lines.size() - 1; i > 0; i--) {
            if (lines.get(i).kind() == LineKind.CHINE) {
                return lines.get(i);
            }
        }
        return lines.get(lines.size() - 1);
    }

    /** How far the surface that the table is drawn to may keep from a reading [m]; 0 where it goes through every point. */
    public double within() {
        return within;
    }

    /** x of the forward end of the surface [m]. */
    public double forwardEnd() {
        return forwardEnd;
    }

    /** x of the after end of the surface [m]. */
    public double afterEnd() {
        return afterEnd;
    }

    /** The lowest skin at a place in plan; at a knuckle the inboard face. Port is negative y. */
    public Optional<SkinPoint> at(double x, double y) {
        double[] point = new double[Panel.POINT_SIZE];
        if (!evaluate(x, y, point, 0)) {
            return Optional.empty();
        }
        return Optional.of(new SkinPoint(x, y, point[Panel.Z],
                point[Panel.NX], point[Panel.NY], point[Panel.NZ],
                Angle.ofRadians(Math.atan(point[Panel.DZ_DY])), Angle.ofRadians(Math.atan(point[Panel.DZ_DX])),
                point[Panel.K1], point[Panel.K2]));
    }

    /**
     * {@link Panel#evaluate} at a place in plan, the lowest skin where there are several.
     * Allocates nothing.
     *
     * @param y half-breadth [m]; negative is port, and turns the sign of the normal's y
     * @return false, and nothing written, off the skin
     */
    public boolean evaluate(double x, double y, double[] out, int at) {
        if (!(x >= forwardEnd && x <= afterEnd)) {
            return false;
        }
        CellIndex along = panels.get(0).cells().along();
        int cell = along.cell(x);
        double t = along.local(cell, x);
        double side = Math.abs(y);
        PanelCells best = null;
        double bestV = 0;
        for (int p = 0; p < panels.size(); p++) {
            PanelCells cells = panels.get(p).cells();
            double v = cells.acrossAt(cell, t, side);
            if (v == v && (best == null
                    || cells.height(cell, t, v) < best.height(cell, t, bestV) - SAME_HEIGHT)) {
                best = cells;
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

    /** Height of the lowest skin [m], NaN off the skin. Allocates nothing. */
    public double height(double x, double y) {
        if (!(x >= forwardEnd && x <= afterEnd)) {
            return Double.NaN;
        }
        CellIndex along = panels.get(0).cells().along();
        int cell = along.cell(x);
        double t = along.local(cell, x);
        double lowest = Double.NaN;
        double side = Math.abs(y);
        for (int p = 0; p < panels.size(); p++) {
            PanelCells cells = panels.get(p).cells();
            double v = cells.acrossAt(cell, t, side);
            if (v == v) {
                double z = cells.height(cell, t, v);
                lowest = z >= lowest ? lowest : z;
            }
        }
        return lowest;
    }

    /**
     * {@link #height} at one x and the half-breadths 0, step, 2 step … [m], the section worked out once:
     * for grids.
     *
     * @param out filled from {@code at} with {@code count} heights
     */
    public void heights(double x, double step, double[] out, int at, int count) {
        Arrays.fill(out, at, at + count, Double.NaN);
        if (x >= forwardEnd && x <= afterEnd) {
            for (Panel panel : panels) {
                panel.cells().lowerHeights(x, step, out, at, count);
            }
        }
    }

    /** Girth from the keel line along the section's skin to y [m], NaN off the skin; never negative. */
    public double girth(double x, double y) {
        if (!(x >= forwardEnd && x <= afterEnd)) {
            return Double.NaN;
        }
        CellIndex along = panels.get(0).cells().along();
        int cell = along.cell(x);
        double t = along.local(cell, x);
        double best = Double.NaN;
        double bestZ = Double.POSITIVE_INFINITY;
        double inner = 0;
        for (Panel panel : panels) {
            double v = panel.cells().acrossAt(cell, t, Math.abs(y));
            PanelSection section = new PanelSection(panel, x);
            if (v == v && section.value(Coordinate.Z, v) < bestZ - SAME_HEIGHT) {
                bestZ = section.value(Coordinate.Z, v);
                best = inner + section.girthTo(v);
            }
            inner += section.girthTo(1);
        }
        return best;
    }

    /** Half-breadth at x and height z [m], the outermost where there are several. */
    public OptionalDouble halfBreadth(double x, double z) {
        if (!(x >= forwardEnd && x <= afterEnd)) {
            return OptionalDouble.empty();
        }
        double outermost = -1;
        for (Panel panel : panels) {
            PanelSection section = new PanelSection(panel, x);
            for (double v : section.crossings(Coordinate.Z, z)) {
                outermost = Math.max(outermost, section.value(Coordinate.Y, v));
            }
        }
        return outermost < 0 ? OptionalDouble.empty() : OptionalDouble.of(outermost);
    }

    /** The section at x: a curve per panel, from the keel outward, starboard, within chord [m] of true. */
    public List<Curve> section(double x, double chord) {
        List<Curve> curves = new ArrayList<>();
        if (x >= forwardEnd && x <= afterEnd) {
            for (int p = 0; p < panels.size(); p++) {
                curves.add(new Curve(p, new PanelSection(panels.get(p), x).points(chord)));
            }
        }
        return curves;
    }

    /** The buttock at y [m], starboard, within chord [m] of true. */
    public List<Curve> buttock(double y, double chord) {
        return level(1, 0, y, chord);
    }

    /** The waterline at height z [m], starboard, within chord [m] of true. */
    public List<Curve> waterline(double z, double chord) {
        return level(0, 1, z, chord);
    }

    /**
     * The diagonal that starts on the centreline at height z [m] and runs down and outward at an angle below
     * the horizontal, starboard, within chord [m] of true.
     *
     * @param below more than nothing, less than a right angle
     */
    public List<Curve> diagonal(double z, Angle below, double chord) {
        return level(Math.sin(below.radians()), Math.cos(below.radians()), z * Math.cos(below.radians()), chord);
    }

    private List<Curve> level(double a, double b, double c, double chord) {
        List<Curve> curves = new ArrayList<>();
        for (int p = 0; p < panels.size(); p++) {
            for (List<Vector3D> points : new LevelCurves(panels.get(p), a, b, c).trace(chord)) {
                curves.add(new Curve(p, points));
            }
        }
        return curves;
    }

    /** A named line as points, within chord [m] of true, forward to aft. */
    public Curve line(HullLine line, double chord) {
        List<Vector3D> points = new ArrayList<>();
        CellIndex cells = panels.get(0).cells().along();
        points.add(Vector3D.of(forwardEnd, line.y(forwardEnd), line.z(forwardEnd)));
        for (int cell = 0; cell < cells.cells(); cell++) {
            double from = cells.bound(cell);
            double to = cells.bound(cell + 1);
            double bend = Math.max(line.bend(from), line.bend(to));
            int pieces = Math.max(1, (int) Math.ceil((to - from) * Math.sqrt(bend / (8 * chord))));
            for (int i = 1; i <= pieces; i++) {
                double x = from + (to - from) * i / pieces;
                points.add(Vector3D.of(x, line.y(x), line.z(x)));
            }
        }
        return new Curve(Math.min(lines.indexOf(line), panels.size() - 1), points);
    }
}
