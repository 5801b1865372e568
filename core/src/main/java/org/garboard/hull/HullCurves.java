package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.geometry.CubicSpline;
import org.garboard.units.Angle;

/**
 * A hull as curves: cut by planes, along its named lines and its ends.
 *
 * @param hull that is cut
 */
public record HullCurves(Hull hull) {
    /** Straight pieces in which a panel's end is given. */
    private static final int EDGE_PIECES = 64;

    /** The section at x: a curve per run of skin, from the keel outward, starboard, within chord [m] of true. */
    public List<Curve> section(double x, double chord) {
        return hull.runs(x).stream().map(run -> new Curve(hull.panels().indexOf(run.panel()), run.points(chord))).toList();
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
        for (int p = 0; p < hull.panels().size(); p++) {
            for (List<Vector3D> points : new LevelCurves(hull.panels().get(p), a, b, c).trace(chord)) {
                curves.add(new Curve(p, points));
            }
        }
        return curves;
    }

    /** The edge in which the skin ends aft, a curve for each panel from the keel outward, starboard. */
    public List<Curve> afterEdge() {
        return edge(hull.panels().size() - hull.panelsAcross(), Panel::to);
    }

    /** The edge in which the skin ends on a stem ahead of the first station, likewise; none where she has no such stem. */
    public List<Curve> stemEdge() {
        return hull.stem().isPresent() ? edge(0, Panel::from) : List.of();
    }

    private List<Curve> edge(int first, ToDoubleBiFunction<Panel, Double> end) {
        List<Curve> edge = new ArrayList<>();
        double[] at = new double[Panel.DERIVATIVES];
        for (int p = first; p < first + hull.panelsAcross(); p++) {
            Panel panel = hull.panels().get(p);
            List<Vector3D> points = new ArrayList<>();
            for (int i = 0; i <= EDGE_PIECES; i++) {
                double v = (double) i / EDGE_PIECES;
                double x = end.applyAsDouble(panel, v);
                panel.differentiate(x, v, at, 0);
                points.add(Vector3D.of(x, at[0], at[1]));
            }
            edge.add(new Curve(p, points));
        }
        return edge;
    }

    /** A named line as points, a curve for each of its pieces, within chord [m] of true, forward to aft. */
    public List<Curve> line(HullLine line, double chord) {
        List<Curve> curves = new ArrayList<>();
        int panel = Math.min(hull.lines().indexOf(line), hull.panelsAcross() - 1);
        for (int piece = 0; piece < line.pieces(); piece++) {
            curves.add(new Curve(piece * hull.panelsAcross() + panel, points(line, piece, chord)));
        }
        return curves;
    }

    private static List<Vector3D> points(HullLine line, int piece, double chord) {
        CubicSpline y = line.halfBreadth(piece);
        CubicSpline z = line.height(piece);
        double start = line.from(piece);
        List<Vector3D> points = new ArrayList<>();
        points.add(Vector3D.of(start, y.value(start), z.value(start)));
        for (int cell = 0; cell < z.knots().cells(); cell++) {
            double from = Math.max(start, z.knots().cellStart(cell));
            double to = Math.min(line.to(piece), z.knots().cellStart(cell + 1));
            double bend = Math.max(bend(y, z, from), bend(y, z, to));
            int pieces = Math.max(1, (int) Math.ceil((to - from) * Math.sqrt(bend / (8 * chord))));
            for (int i = 1; i <= pieces && to > from; i++) {
                double x = from + (to - from) * i / pieces;
                points.add(Vector3D.of(x, y.value(x), z.value(x)));
            }
        }
        return points;
    }

    private static double bend(CubicSpline y, CubicSpline z, double x) {
        return Math.hypot(y.derivative(2, x), z.derivative(2, x));
    }
}
