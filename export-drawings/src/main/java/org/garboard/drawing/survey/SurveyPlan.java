package org.garboard.drawing.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.craft.LaidFeature;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Scale;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.sheets.FeaturesBelow;
import org.garboard.drawing.sheets.HullBelow;
import org.garboard.drawing.sheets.HullOnPaper;
import org.garboard.drawing.sheets.ViewTitle;
import org.garboard.drawing.survey.MarkedSpot.Seen;
import org.garboard.hull.Hull;
import org.garboard.job.RecordedSiting;
import org.garboard.survey.LaidFinding;
import org.garboard.survey.Spot;
import org.garboard.survey.SurveyPlace;

/** The bottom seen from below, bow to the right, so that starboard is up: what was found on it. */
final class SurveyPlan {
    /** Half of the diamond that marks the transducer [mm]. */
    private static final double DIAMOND = 2;

    private final SurveyTask task;
    private final Hull hull;
    private final HullOnPaper paper;
    private final Lettering lettering;
    private final List<Entity> shown = new ArrayList<>();
    private final List<MarkedSpot> spots = new ArrayList<>();

    private SurveyPlan(SurveyTask task, Scale scale) {
        this.task = task;
        this.hull = task.hull();
        this.paper = new HullOnPaper(hull, scale);
        this.lettering = task.lettering();
    }

    static View of(SurveyTask task, Scale scale) {
        SurveyPlan plan = new SurveyPlan(task, scale);
        double over = 1.5 * plan.lettering.figures();
        plan.shown.addAll(HullBelow.of(plan.hull, task.table(), plan.paper, over));
        for (LaidFeature feature : task.set().features().laid()) {
            plan.shown.addAll(FeaturesBelow.outlines(feature, plan.paper, Layer.FORM));
        }
        plan.transducers();
        task.findings().forEach(plan::finding);
        Box box = View.around("hull", plan.shown).frame();
        List<Entity> balloons = BalloonRows.of(plan.spots,
            new Seats.Rows(0, plan.paper.length(), box.top(), List.of(box.bottom())), plan.lettering.figures());
        double aft = balloons.stream().mapToDouble(balloon -> balloon.bounds().left()).min().orElse(0);
        plan.shown.addAll(HullBelow.directions(plan.paper, Math.min(box.left() + over, Math.min(0, aft)), box.top(), plan.lettering.figures()));
        plan.shown.addAll(balloons);
        return ViewTitle.above("BOTTOM PLAN SEEN FROM BELOW: STARBOARD IS UP", "", plan.shown, plan.lettering, 0);
    }

    private void transducers() {
        task.set().sitings().stream().map(RecordedSiting::place).flatMap(Optional::stream).forEach(at -> {
            Point middle = paper.below(at.x(), at.y());
            shown.add(Polyline.closed(Layer.CUT, List.of(middle.movedBy(DIAMOND, 0), middle.movedBy(0, DIAMOND),
                middle.movedBy(-DIAMOND, 0), middle.movedBy(0, -DIAMOND))));
        });
    }

    private void finding(LaidFinding laid) {
        for (Spot spot : laid.spots()) {
            if (spot.face() == Spot.Face.BOTTOM) {
                double x = spot.point().getX();
                double y = spot.point().getY();
                spots.add(new MarkedSpot(laid.finding().number(), paper.below(x, y), Seen.NEAR));
                if (laid.finding().place().out() instanceof SurveyPlace.NotTold) {
                    shown.add(new Line(Layer.MARK, paper.below(x, 0), paper.below(x, Math.copySign(hull.bottomEdge().y(x), y))));
                }
            }
        }
    }
}
