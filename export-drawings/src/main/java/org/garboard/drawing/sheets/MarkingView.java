package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Balloon;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Leader;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.ClearPlace;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.Spread;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hull.Step;
import org.garboard.marking.Mark;
import org.garboard.marking.MarkedLength;
import org.garboard.marking.MarkingOut;

/** The bottom from below between the datum and the foremost mark: marks, and tapes as they lie. */
final class MarkingView {
    /** Beyond the foremost mark as a share of the whole, and pieces in which a line is drawn: our choice. */
    private static final double BEYOND = 0.08;
    private static final int PIECES = 200;

    private final Hull hull;
    private final MarkingOut plan;
    private final Scale scale;
    private final Lettering lettering;
    private final double forward;
    private final double aft;
    private final List<Entity> shown = new ArrayList<>();

    private MarkingView(SheetTask task, MarkingOut plan, Scale scale) {
        this.hull = task.hull();
        this.plan = plan;
        this.scale = scale;
        this.lettering = task.lettering();
        this.forward = forward(task.hull(), plan);
        this.aft = Math.min(hull.afterEnd(), aftermost(plan) + BEYOND * (aftermost(plan) - forward));
    }

    private static double aftermost(MarkingOut plan) {
        return plan.marks().stream().mapToDouble(mark -> mark.place().getX()).max().orElseThrow();
    }

    private static double forward(Hull hull, MarkingOut plan) {
        double foremost = plan.marks().stream().mapToDouble(mark -> mark.place().getX()).min().orElseThrow();
        return Math.max(hull.forwardEnd(), foremost - BEYOND * (aftermost(plan) - foremost));
    }

    /** How long the part of the boat is that is drawn [m]. */
    static double length(Hull hull, MarkingOut plan) {
        return aftermost(plan) - forward(hull, plan);
    }

    static View of(SheetTask task, MarkingOut plan, Scale scale) {
        MarkingView view = new MarkingView(task, plan, scale);
        view.hullLines();
        view.tapes();
        view.directions();
        view.marks();
        return ViewTitle.above("BOTTOM SEEN FROM BELOW: STARBOARD IS UP", "Bow right. Tapes between the lettered marks, in the table by their two letters.",
                view.shown, view.lettering, 60);
    }

    private Point at(double x, double y) {
        return new Point(scale.paper(aft - x), scale.paper(y));
    }

    private Point at(Vector3D place) {
        return at(place.getX(), place.getY());
    }

    /** Named lines of the bottom on the sides that carry marks, cut off fore and aft. */
    private void hullLines() {
        for (HullLine line : hull.lines().subList(1, hull.lines().indexOf(hull.bottomEdge()) + 1)) {
            for (int side : sides()) {
                List<Point> points = new ArrayList<>();
                double end = Math.min(aft, line.afterEnd());
                for (int i = 0; i <= PIECES; i++) {
                    double x = forward + (end - forward) * i / PIECES;
                    points.add(at(x, side * line.y(x)));
                }
                shown.add(Polyline.open(Layer.HULL, points));
            }
        }
        for (int side : sides()) {
            HullLine edge = hull.bottomEdge();
            if (aft >= hull.foot()) {
                shown.add(new Line(Layer.HULL, at(hull.foot(), 0), at(Math.min(aft, edge.afterEnd()), side * edge.y(edge.afterEnd()))));
            }
            for (Step step : hull.steps()) {
                if (step.x(0) > forward && step.x(0) <= aft) {
                    List<Point> line = new ArrayList<>();
                    step.halfBreadths(0.1).stream().filter(y -> step.x(y) >= forward && step.x(y) <= aft)
                            .forEach(y -> line.add(at(step.x(y), side * y)));
                    shown.add(Polyline.open(Layer.HULL, line));
                }
            }
        }
        double over = 1.5 * lettering.figures();
        shown.add(new Line(Layer.CENTRE, at(aft, 0).movedBy(-over, 0), at(forward, 0).movedBy(over, 0)));
    }

    private List<Integer> sides() {
        List<Integer> sides = new ArrayList<>();
        if (plan.marks().stream().anyMatch(mark -> mark.place().getY() > 1e-9)) {
            sides.add(1);
        }
        if (plan.marks().stream().anyMatch(mark -> mark.place().getY() < -1e-9)) {
            sides.add(-1);
        }
        return sides;
    }

    private void tapes() {
        for (MarkedLength length : plan.lengths()) {
            List<Point> points = new ArrayList<>();
            for (Vector3D place : length.tape().path()) {
                Point point = at(place);
                if (points.isEmpty() || points.get(points.size() - 1).distanceTo(point) > 0.2) {
                    points.add(point);
                }
            }
            Point last = at(length.to().place());
            if (points.get(points.size() - 1).distanceTo(last) > 1e-3) {
                points.add(last);
            }
            if (points.size() > 1 && length.way() != MarkedLength.Way.ALONG_KEEL && length.way() != MarkedLength.Way.BESIDE_KEEL) {
                shown.add(Polyline.open(Layer.MARK, points));
            }
        }
    }

    private void directions() {
        double h = lettering.figures();
        Point bow = at(forward, 0).movedBy(1.7 * h, 0);
        shown.add(new Leader(Layer.DIM, Leader.End.ARROW, List.of(bow.movedBy(3.5 * h, 0), bow)));
        shown.add(Text.level(Layer.TEXT, "FWD", bow.movedBy(0, 0.7 * h), h, Anchor.LEFT));
        shown.add(Text.level(Layer.TEXT, "CL", bow.movedBy(0, -1.7 * h), h, Anchor.LEFT));
    }

    /** Balloons in a row beyond the outermost mark, those of the port side below, each over its mark as nearly as may be. */
    private void marks() {
        double radius = Balloon.radius(lettering.figures());
        double outermost = plan.marks().stream().mapToDouble(mark -> Math.abs(mark.place().getY())).max().orElse(0);
        boolean starboard = sides().contains(1);
        double row = scale.paper(outermost) + 2 * radius + 4;
        List<Mark> above = plan.marks().stream().filter(mark -> starboard && (mark.place().getY() > 1e-9 || onKeelAbove(mark))).toList();
        List<Mark> below = plan.marks().stream().filter(mark -> !above.contains(mark)).toList();
        clearRow(above, row, 1, radius);
        clearRow(below, sides().contains(-1) ? -row : -radius - 4, -1, radius);
    }

    /** The nearest row whose letters stand on no line. */
    private void clearRow(List<Mark> row, double nearest, int outward, double radius) {
        shown.addAll(ClearPlace.among(IntStream.range(0, 12).mapToObj(step ->
                row(row, nearest + outward * step * radius / 2, radius)).toList(), shown));
    }

    /** With marks on both sides those of the keel line stand above; with one side they stand on the keel line's free side. */
    private boolean onKeelAbove(Mark mark) {
        return sides().size() > 1 && mark.place().getY() > -1e-9;
    }

    /**
     * Off the keel line a leader leans, so that it does not run along a tape that is square to the keel; that of the
     * datum leans aft, clear of the line in which the skin ends there.
     */
    private double aside(Mark mark) {
        if (mark.equals(plan.marks().get(0))) {
            return -2 * lettering.figures();
        }
        return Math.abs(mark.place().getY()) > 1e-9 ? 2 * lettering.figures() : 0;
    }

    private List<Entity> row(List<Mark> row, double y, double radius) {
        List<Mark> sorted = row.stream().sorted(Comparator.comparingDouble(mark -> at(mark.place()).x())).toList();
        double[] wanted = sorted.stream().mapToDouble(mark -> at(mark.place()).x() + aside(mark)).toArray();
        double[] spread = Spread.apart(wanted, 2 * radius + 2);
        List<Entity> balloons = new ArrayList<>();
        for (int i = 0; i < wanted.length; i++) {
            balloons.add(new Balloon(new Point(spread[i], y), sorted.get(i).letter(), lettering.figures(), List.of(at(sorted.get(i).place()))));
        }
        return balloons;
    }
}
