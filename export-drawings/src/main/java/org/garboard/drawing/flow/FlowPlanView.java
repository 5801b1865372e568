package org.garboard.drawing.flow;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Scale;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.sheets.HullBelow;
import org.garboard.drawing.sheets.HullOnPaper;
import org.garboard.drawing.sheets.NameColumn;
import org.garboard.drawing.sheets.ViewTitle;
import org.garboard.hull.Hull;

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
        view.shown.addAll(HullBelow.of(view.hull, task.table(), view.paper, 1.5 * view.lettering.figures()));
        task.picture().areas().forEach(view::area);
        task.picture().curves().forEach(view::curve);
        view.shown.addAll(ShadowsBelow.of(task.picture().shadows(), view.labels, view.paper, view.lettering.tables(), -2 * view.lettering.figures()));
        double aft = View.around("so far", view.shown).frame().left();
        view.shown.addAll(HullBelow.directions(view.paper, Math.min(0, aft), view.halfBeam(), view.lettering.figures()));
        return ViewTitle.above("BOTTOM PLAN SEEN FROM BELOW: STARBOARD IS UP", task.picture().heading(), view.shown, view.lettering, 0);
    }

    private void area(PlanArea area) {
        shown.addAll(area.kind().strokes().over(RegionBelow.rings(area.region(), paper)));
        if (!area.label().isEmpty()) {
            Vector2D inside = area.region().inside();
            labels.add(new NameColumn.Name(area.label(), paper.below(inside.getX(), inside.getY())));
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

    private double halfBeam() {
        double widest = 0;
        for (int i = 0; i <= LOOKS; i++) {
            widest = Math.max(widest, HullBelow.outermost(hull, hull.forwardEnd() + (hull.afterEnd() - hull.forwardEnd()) * i / LOOKS));
        }
        return scale.paper(widest);
    }
}
