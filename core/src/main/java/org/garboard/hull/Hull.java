package org.garboard.hull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.hull.PanelSection.Coordinate;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.SkinSurface;
import org.garboard.units.Angle;

/**
 * The hull surface: panels between named lines, lofted through the stations; broken into lengths where steps
 * cross the bottom, each ending at a face.
 */
public final class Hull {
    /** Two places this near at a knuckle are at one height, and the inboard one answers [m]. */
    private static final double SAME_HEIGHT = 1e-9;

    private final HullLength[] lengths;
    private final List<Panel> panels;
    private final List<HullLine> lines;
    private final List<Step> steps;
    private final double within;
    private final double forwardEnd;
    private final double afterEnd;
    private final double firstSection;

    /** A hull of one length. */
    Hull(List<HullLine> lines, List<Panel> panels, double within) {
        this(List.of(new HullLength(panels)), lines, List.of(), within);
    }

    /**
     * @param lengths from forward aft
     * @param lines of the whole hull
     * @param steps between the lengths, one fewer
     */
    Hull(List<HullLength> lengths, List<HullLine> lines, List<Step> steps, double within) {
        this.lengths = lengths.toArray(HullLength[]::new);
        this.panels = lengths.stream().flatMap(length -> length.panels().stream()).toList();
        this.lines = List.copyOf(lines);
        this.steps = List.copyOf(steps);
        this.within = within;
        this.forwardEnd = lengths.get(0).begin();
        this.firstSection = panels.get(0).fore() instanceof StemFace stem ? stem.first() : forwardEnd;
        this.afterEnd = lengths.get(lengths.size() - 1).end();
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
        return outside(Loft.within(table), table.surface());
    }

    private static Hull outside(Hull drawn, SkinSurface surface) {
        double[] thickness = drawn.panels.stream().mapToDouble(panel -> surface.thickness(panel.name())).toArray();
        return Arrays.stream(thickness).allMatch(each -> each == 0) ? drawn : OutsideLoft.of(drawn, thickness);
    }

    /**
     * Panels of each length from the keel outward, the lengths from forward aft. A hull has one length more than
     * steps, and each has the same panels.
     */
    public List<Panel> panels() {
        return panels;
    }

    /** How many panels there are from keel to sheer. */
    public int panelsAcross() {
        return lines.size() - 1;
    }

    /** Whether a panel is the last from the keel outward, above which there is no skin. */
    public boolean isOutermost(Panel panel) {
        return panels.indexOf(panel) % panelsAcross() == panelsAcross() - 1;
    }

    /** The steps across the bottom, from forward aft. */
    public List<Step> steps() {
        return steps;
    }

    /** Named lines from keel to sheer: keel, flat keel's edge if any, chines, sheer. */
    public List<HullLine> lines() {
        return lines;
    }

    /** The keel line, first of {@link #lines()}. */
    public HullLine keel() {
        return lines.get(0);
    }

    /**
     * Index of the line from which the skin runs outward and girth is measured: the keel line, first of {@link #lines()};
     * or the rabbet, second of them, where a keel hangs below the skin. What lies inboard of the rabbet is a level lid that
     * closes the hull above that keel, and no skin.
     */
    public int skinLine() {
        return lines.get(1).kind() == LineKind.RABBET ? 1 : 0;
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

    /** x of the forward end of the surface [m]; of a stem forward of the first station its foremost place. */
    public double forwardEnd() {
        return forwardEnd;
    }

    /**
     * x of the first station [m], where sections begin that reach from the keel outward: the forward end, unless the skin
     * is drawn on from there to a stem.
     */
    public double firstSection() {
        return firstSection;
    }

    /** The stem ahead of the first station on which the skin ends forward, if the table gives one. */
    public Optional<StemFace> stem() {
        return panels.get(0).fore() instanceof StemFace stem ? Optional.of(stem) : Optional.empty();
    }

    /** x of the after end of the surface [m]; of a raked or round transom its aftermost place. */
    public double afterEnd() {
        return afterEnd;
    }

    /** x at which the keel line ends: the bottom corner of the transom, from which lengths are taped [m]. */
    public double foot() {
        return keel().to(keel().pieces() - 1);
    }

    /** x abaft of which some of the bottom has ended [m]: the forward one of the foot and the transom's outer corner. */
    public double bottomEnd() {
        return Math.min(foot(), bottomEdge().to(bottomEdge().pieces() - 1));
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
     * Allocates nothing abaft of {@link #firstSection}.
     *
     * @param y half-breadth [m]; negative is port, and turns the sign of the normal's y
     * @return false, and nothing written, off the skin
     */
    public boolean evaluate(double x, double y, double[] out, int at) {
        HullLength length = lengthAt(x, Math.abs(y));
        return length != null && (length.isAtStem(x) ? evaluateAtStem(x, y, out, at) : length.evaluate(x, y, out, at));
    }

    /** The lowest of the runs that the stem leaves. */
    private boolean evaluateAtStem(double x, double y, double[] out, int at) {
        double lowest = Double.POSITIVE_INFINITY;
        for (SkinRun run : runs(x)) {
            double v = run.across(Math.abs(y));
            if (v == v && run.z(v) < lowest - SAME_HEIGHT) {
                lowest = run.z(v);
                run.panel().evaluate(x, v, out, at);
            }
        }
        if (lowest < Double.POSITIVE_INFINITY && y < 0) {
            out[at + Panel.Y] = y;
            out[at + Panel.NY] = -out[at + Panel.NY];
        }
        return lowest < Double.POSITIVE_INFINITY;
    }

    private HullLength lengthAt(double x, double side) {
        if (x >= forwardEnd) {
            for (HullLength length : lengths) {
                if (length.reaches(x, side)) {
                    return length;
                }
            }
        }
        return null;
    }

    /** Height of the lowest skin [m], NaN off the skin. Allocates nothing abaft of {@link #firstSection}. */
    public double height(double x, double y) {
        double side = Math.abs(y);
        HullLength length = lengthAt(x, side);
        if (length != null && length.isAtStem(x)) {
            double[] point = new double[Panel.POINT_SIZE];
            return evaluateAtStem(x, side, point, 0) ? point[Panel.Z] : Double.NaN;
        }
        return length == null ? Double.NaN : length.height(x, side);
    }

    /**
     * {@link #height} at one x and the half-breadths 0, step, 2 step … [m], the section worked out once:
     * for grids.
     *
     * @param out filled from {@code at} with {@code count} heights
     */
    public void heights(double x, double step, double[] out, int at, int count) {
        HullLength whole = wholeAt(x);
        if (whole != null) {
            whole.heights(x, step, out, at, count);
        } else {
            for (int i = 0; i < count; i++) {
                out[at + i] = height(x, i * step);
            }
        }
    }

    /** The length whose section at x no face cuts; null where there is none such. */
    private HullLength wholeAt(double x) {
        HullLength whole = x >= forwardEnd ? Arrays.stream(lengths).filter(length -> length.reaches(x)).findFirst().orElse(null) : null;
        return whole != null && whole.isWhole(x) ? whole : null;
    }

    /**
     * The skin of a section from the keel outward, run by run: a panel each, or where faces cut the section
     * the parts of panels that are skin. Empty off the hull.
     */
    public List<SkinRun> runs(double x) {
        HullLength whole = wholeAt(x);
        if (whole != null) {
            return whole.panels().stream().map(panel -> new SkinRun(panel, x, 0, 1)).toList();
        }
        List<SkinRun> runs = new ArrayList<>();
        for (int p = 0; p < panelsAcross() && x >= forwardEnd; p++) {
            List<SkinRun> ofPanel = new ArrayList<>();
            for (HullLength length : lengths) {
                ofPanel.addAll(SkinRun.of(length.panels().get(p), x));
            }
            ofPanel.sort(Comparator.comparingDouble(SkinRun::middle));
            runs.addAll(ofPanel);
        }
        return runs;
    }

    /**
     * Girth from the keel line, or where the stem stands from the skin's edge on it (the rabbet, where a keel hangs below it) along the skin to y [m], over the face of a step where it lies between;
     * NaN off the skin; never negative.
     */
    public double girth(double x, double y) {
        double side = Math.abs(y);
        double best = Double.NaN;
        double bestZ = Double.POSITIVE_INFINITY;
        double inner = 0;
        SkinRun before = null;
        for (SkinRun run : runs(x)) {
            inner += before == null ? 0 : before.gapTo(run);
            double v = run.across(side);
            if (v == v && run.z(v) < bestZ - SAME_HEIGHT) {
                bestZ = run.z(v);
                best = inner + run.girthTo(v);
            }
            inner += run.girthTo(run.to());
            before = run;
        }
        SkinRun first = Double.isNaN(best) ? null : runs(x).get(0);
        return skinLine() == 0 || first == null || panels.indexOf(first.panel()) > 0 ? best
                : Math.max(0, best - first.girthTo(first.to()));
    }

    /** Half-breadth at x and height z [m], the outermost where there are several. */
    public OptionalDouble halfBreadth(double x, double z) {
        double outermost = -1;
        for (SkinRun run : runs(x)) {
            for (double v : run.section().crossings(Coordinate.Z, z)) {
                outermost = v >= run.from() && v <= run.to() ? Math.max(outermost, run.y(v)) : outermost;
            }
        }
        return outermost < 0 ? OptionalDouble.empty() : OptionalDouble.of(outermost);
    }

    /** Whether the skin ends aft square across, at one section. */
    public boolean endsSquare() {
        return panels.get(panels.size() - 1).aft().isSquare();
    }
}
