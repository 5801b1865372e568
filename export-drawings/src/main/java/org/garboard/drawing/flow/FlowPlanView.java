package org.garboard.drawing.flow;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Scale;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.NameColumn;
import org.garboard.drawing.sheets.HullBelow;
import org.garboard.drawing.sheets.HullOnPaper;
import org.garboard.drawing.sheets.ViewTitle;
import org.garboard.drawing.water.WaterBelow;
import org.garboard.hull.Hull;

/** The bottom seen from below, bow to the right, so that starboard is up: lines of the flow, and shadows. */
final class FlowPlanView {
    private static final int LOOKS = 200;

    private final FlowTask task;
    private final Hull hull;
    private final Scale scale;
    private final HullOnPaper paper;
    private final Lettering lettering;
    private final List<Entity> shown = new ArrayList<>();

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
        WaterBelow water = new WaterBelow(view.paper::below);
        task.picture().areas().forEach(water::area);
        task.picture().curves().forEach(water::curve);
        task.picture().shadows().forEach(water::shadow);
        view.shown.addAll(water.shown());
        view.shown.addAll(NameColumn.leftOf(-2 * view.lettering.figures(), NameColumn.NO_FLOOR, water.names(), view.lettering.tables()));
        double aft = View.around("so far", view.shown).frame().left();
        view.shown.addAll(HullBelow.directions(view.paper, Math.min(0, aft), view.halfBeam(), view.lettering.figures()));
        return ViewTitle.above("BOTTOM PLAN SEEN FROM BELOW: STARBOARD IS UP", task.picture().heading(), view.shown, view.lettering, 0);
    }

    private double halfBeam() {
        double widest = 0;
        for (int i = 0; i <= LOOKS; i++) {
            widest = Math.max(widest, HullBelow.outermost(hull, hull.forwardEnd() + (hull.afterEnd() - hull.forwardEnd()) * i / LOOKS));
        }
        return scale.paper(widest);
    }
}
