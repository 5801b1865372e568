package org.garboard.drawing.flow;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Leader;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.sheets.HullOnPaper;
import org.garboard.drawing.sheets.NameColumn;
import org.garboard.drawing.sheets.ViewTitle;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;

/** The bottom seen from below, bow to the right, so that starboard is up: lines of the flow, and shadows. */
final class FlowPlanView {
    private static final int LOOKS = 200;
    /** Points of a flow line nearer on paper are left out [mm]. */
    private static final double FINE = 0.3;

    private final FlowTask task;
    private final Hull hull;
    private final Scale scale;
    private final HullOnPaper paper;
    private final Lettering lettering;
    private final List<Entity> shown = new ArrayList<>();
    private final List<NameColumn.Name> labels = new ArrayList<>();

    private FlowPlanView(FlowTask task, Scale scale) {
        this.task = task;
        this.hull = task.hull();
        this.scale = scale;
        this.paper = new HullOnPaper(hull, scale);
        this.lettering = task.lettering();
    }

    static View of(FlowTask task, Scale scale) {
        FlowPlanView view = new FlowPlanView(task, scale);
        view.hullLines();
        task.picture().curves().forEach(view::curve);
        view.directions();
        view.shown.addAll(ShadowsBelow.of(task.picture().shadows(), view.labels, view.paper, view.lettering.tables(), -2 * view.lettering.figures()));
        return ViewTitle.above("BOTTOM PLAN SEEN FROM BELOW: STARBOARD IS UP", task.picture().heading(), view.shown, view.lettering, 0);
    }

    private void hullLines() {
        for (HullLine line : hull.lines().subList(1, hull.lines().size())) {
            shown.addAll(paper.below(line, 1));
            shown.addAll(paper.below(line, -1));
        }
        ending(hull.afterEnd());
        ending(hull.forwardEnd());
        double over = 1.5 * lettering.figures();
        shown.add(new Line(Layer.CENTRE, new Point(-over, 0), new Point(paper.length() + over, 0)));
    }

    private double outermost(double x) {
        return hull.lines().stream().mapToDouble(line -> line.y(x)).max().orElse(0);
    }

    private void ending(double x) {
        double beam = outermost(x);
        if (scale.paper(beam) > 0.01) {
            shown.add(new Line(Layer.HULL, paper.below(x, -beam), paper.below(x, beam)));
        }
    }

    private void curve(PlanCurve curve) {
        for (int side : new int[] {1, -1}) {
            List<Point> points = new ArrayList<>();
            for (Vector2D point : curve.points()) {
                Point next = paper.below(point.getX(), side * point.getY());
                if (points.isEmpty() || points.get(points.size() - 1).distanceTo(next) > FINE) {
                    points.add(next);
                }
            }
            if (points.size() > 1) {
                shown.add(Polyline.open(curve.kind().layer(), points));
                if (side < 0 && !curve.label().isEmpty()) {
                    labels.add(new NameColumn.Name(curve.label(), points.get(points.size() - 1)));
                }
            }
        }
    }

    private void directions() {
        double h = lettering.figures();
        double beam = 0;
        for (int i = 0; i <= LOOKS; i++) {
            beam = Math.max(beam, outermost(hull.forwardEnd() + (hull.afterEnd() - hull.forwardEnd()) * i / LOOKS));
        }
        double edge = scale.paper(beam);
        shown.add(Text.level(Layer.TEXT, "STBD", new Point(0, edge + h), h, Anchor.LEFT));
        shown.add(Text.level(Layer.TEXT, "PORT", new Point(0, -edge - 2 * h), h, Anchor.LEFT));
        Point bow = new Point(paper.length() + 1.7 * h, 0);
        shown.add(new Leader(Layer.DIM, Leader.End.ARROW, List.of(bow.movedBy(3.5 * h, 0), bow)));
        shown.add(Text.level(Layer.TEXT, "FWD", bow.movedBy(0, 0.7 * h), h, Anchor.LEFT));
        shown.add(Text.level(Layer.TEXT, "CL", bow.movedBy(0, -1.7 * h), h, Anchor.LEFT));
    }
}
