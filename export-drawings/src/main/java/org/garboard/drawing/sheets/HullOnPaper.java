package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.appendage.Keel;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Scale;
import org.garboard.hull.Curve;
import org.garboard.hull.Hull;
import org.garboard.hull.HullCurves;
import org.garboard.hull.HullLine;
import org.garboard.hull.Step;
import org.garboard.offsets.StrakeEdges;

/**
 * A hull's places on paper at one scale, bow to the right, the after end of the table at the left.
 *
 * <p>Profile: base line at y = 0. Bottom seen from below: centreline at y = 0, starboard up.
 * Sections looking forward: centreline at x = 0, starboard to the right, base line at y = 0.
 */
public final class HullOnPaper {
    /** Points of a step's line lie no farther apart [m]: its edges are all but straight between. */
    private static final double STEP_POINTS = 0.1;

    /** Curves may stray so far from true [mm on paper]: a fifth of the finest pen. */
    private static final double CHORD = 0.05;

    private final Hull hull;
    private final Scale scale;

    public HullOnPaper(Hull hull, Scale scale) {
        this.hull = hull;
        this.scale = scale;
    }

    /** Largest departure of a drawn curve [m]. */
    public double chord() {
        return scale.trueMm(CHORD) / 1000;
    }

    public double lengthwise(double x) {
        return scale.paper(hull.afterEnd() - x);
    }

    public double length() {
        return lengthwise(hull.forwardEnd());
    }

    public Point profile(double x, double z) {
        return new Point(lengthwise(x), scale.paper(z));
    }

    public Point below(double x, double y) {
        return new Point(lengthwise(x), scale.paper(y));
    }

    /** A place in plan, port is negative y. */
    public Point below(Vector2D place) {
        return below(place.getX(), place.getY());
    }

    public Point lookingForward(double y, double z) {
        return new Point(scale.paper(y), scale.paper(z));
    }

    /** A named line seen from the side, a polyline for each piece between steps. */
    public List<Entity> profile(HullLine line) {
        return drawn(Layer.HULL, new HullCurves(hull).line(line, chord()), point -> profile(point.getX(), point.getZ()));
    }

    /** A named line seen from below, on the side of the sign. */
    public List<Entity> below(HullLine line, int side) {
        return drawn(Layer.HULL, new HullCurves(hull).line(line, chord()), point -> below(point.getX(), side * point.getY()));
    }

    /** The whole section of one side as one line; the sides of a hull meet its panels end to end. */
    public Polyline section(Layer layer, double x, int side) {
        List<Point> points = new ArrayList<>();
        for (Curve curve : new HullCurves(hull).section(x, chord())) {
            for (Vector3D point : curve.points()) {
                add(points, lookingForward(side * point.getY(), point.getZ()));
            }
        }
        return Polyline.open(layer, points);
    }

    /** Curves as they run, a polyline for each branch that is more than a point on paper. */
    public List<Entity> drawn(Layer layer, List<Curve> curves, Function<Vector3D, Point> place) {
        return curves.stream().map(curve -> points(curve, place)).filter(points -> points.size() > 1)
                .<Entity>map(points -> Polyline.open(layer, points)).toList();
    }

    /** A keel below the skin from the side. */
    public Polyline profile(Keel keel) {
        return Polyline.open(Layer.HULL, keel.profile().stream().map(point -> profile(point.getX(), point.getZ())).toList());
    }

    /** Half of a keel below the skin in a section, with its lower corner; nothing where it does not hang. */
    public List<Entity> cut(Layer layer, Keel keel, double x, int side) {
        List<Vector3D> cut = keel.cut(x);
        return cut.isEmpty() ? List.of() : List.of(Polyline.open(layer,
                cut.stream().map(point -> lookingForward(side * point.getY(), point.getZ())).toList()));
    }

    /** A lifting strake's two edges from the side. */
    public List<Entity> profile(StrakeEdges strake) {
        return List.of(Polyline.open(Layer.HULL, strake.cuts().stream().map(cut -> profile(cut.x(), cut.innerZ())).toList()),
                Polyline.open(Layer.HULL, strake.cuts().stream().map(cut -> profile(cut.x(), cut.outerZ())).toList()));
    }

    /** A lifting strake at a station: its face, and its outer side up to the skin. */
    public Polyline cut(Layer layer, StrakeEdges.Cut cut, int side) {
        double skin = hull.height(cut.x(), cut.outerY());
        List<Point> points = new ArrayList<>();
        add(points, lookingForward(side * cut.innerY(), cut.innerZ()));
        add(points, lookingForward(side * cut.outerY(), cut.outerZ()));
        if (skin == skin) {
            add(points, lookingForward(side * cut.outerY(), skin));
        }
        return Polyline.open(layer, points);
    }

    /** The forward end seen from the side: edge on, or the stem ahead of the first station. */
    public List<Entity> foreEndInProfile() {
        return hull.stem().isEmpty() ? endInProfile(hull.forwardEnd())
                : drawn(Layer.HULL, new HullCurves(hull).stemEdge(), point -> profile(point.getX(), point.getZ()));
    }

    /** The after end seen from the side: edge on, or of a raked or round transom the edge of its skin. */
    public List<Entity> afterEndInProfile() {
        return hull.endsSquare() ? endInProfile(hull.afterEnd())
                : drawn(Layer.HULL, new HullCurves(hull).afterEdge(), point -> profile(point.getX(), point.getZ()));
    }

    /** Steps seen from the side: the face at the keel and at the edge of the bottom, and the edges between where they are swept. */
    public List<Entity> stepsInProfile() {
        List<Entity> shown = new ArrayList<>();
        for (Step step : hull.steps()) {
            List<List<Vector3D>> edges = step.edges(STEP_POINTS);
            List<Point> low = onPaper(edges.get(0), point -> profile(point.getX(), point.getZ()));
            List<Point> high = onPaper(edges.get(1), point -> profile(point.getX(), point.getZ()));
            if (step.face().isSquare()) {
                Point top = high.get(high.size() - 1);
                shown.add(new Line(Layer.HULL, low.get(0), new Point(low.get(0).x(), top.y())));
            } else {
                shown.add(Polyline.open(Layer.HULL, low));
                shown.add(Polyline.open(Layer.HULL, high));
                shown.add(new Line(Layer.HULL, low.get(0), high.get(0)));
                shown.add(new Line(Layer.HULL, low.get(low.size() - 1), high.get(high.size() - 1)));
            }
        }
        return shown;
    }

    /** Steps seen from below or above, through a place on paper of x and half-breadth. */
    public List<Entity> stepsInPlan(Layer layer, Function<Vector3D, Point> place) {
        return hull.steps().stream().map(step -> onPaper(step.edges(STEP_POINTS).get(0), place))
                .filter(points -> points.size() > 1).<Entity>map(points -> Polyline.open(layer, points)).toList();
    }

    private static List<Point> onPaper(List<Vector3D> curve, Function<Vector3D, Point> place) {
        List<Point> points = new ArrayList<>();
        curve.forEach(point -> add(points, place.apply(point)));
        return points;
    }

    /** An end of the skin seen edge on from the side; nothing where it comes to a point. */
    public List<Entity> endInProfile(double x) {
        HullLine sheer = hull.lines().get(hull.lines().size() - 1);
        Point low = profile(x, hull.keel().z(x));
        Point high = profile(x, sheer.z(x));
        return low.distanceTo(high) > 0.01 ? List.of(new Line(Layer.HULL, low, high)) : List.of();
    }

    private static List<Point> points(Curve curve, Function<Vector3D, Point> place) {
        List<Point> points = new ArrayList<>();
        curve.points().forEach(point -> add(points, place.apply(point)));
        return points;
    }

    private static void add(List<Point> points, Point point) {
        if (points.isEmpty() || points.get(points.size() - 1).distanceTo(point) > 1e-6) {
            points.add(point);
        }
    }
}
