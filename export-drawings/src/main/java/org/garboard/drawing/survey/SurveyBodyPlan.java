package org.garboard.drawing.survey;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Scale;
import org.garboard.drawing.View;
import org.garboard.drawing.sheets.HullOnPaper;
import org.garboard.drawing.sheets.ViewTitle;
import org.garboard.drawing.survey.MarkedSpot.Seen;
import org.garboard.offsets.Station;
import org.garboard.survey.LaidFinding;
import org.garboard.survey.Spot;

/** All sections whole, looking forward: on which side, and how high, what was found above the bottom. */
final class SurveyBodyPlan {

    private SurveyBodyPlan() {
    }

    /** None where nothing was found above the bottom. */
    static Optional<View> of(SurveyTask task, Scale scale) {
        HullOnPaper paper = new HullOnPaper(task.hull(), scale);
        List<MarkedSpot> spots = spots(task, paper);
        if (spots.isEmpty()) {
            return Optional.empty();
        }
        double height = task.lettering().figures();
        List<Entity> shown = new ArrayList<>();
        for (Station station : task.table().skinStations()) {
            shown.add(paper.section(Layer.GRID, station.x(), 1));
            shown.add(paper.section(Layer.GRID, station.x(), -1));
        }
        Box box = View.around("sections", shown).frame();
        shown.add(new Line(Layer.CENTRE, new Point(0, box.bottom() - 1.5 * height), new Point(0, box.top())));
        shown.addAll(BalloonRows.of(spots, new Seats.Rows(box.left(), box.right(), box.top(), List.of()), height));
        return Optional.of(ViewTitle.above("SECTIONS, LOOKING FORWARD", "Starboard right, port left. What was found above the bottom, at its height and breadth.",
            shown, task.lettering(), 24 * height));
    }

    private static List<MarkedSpot> spots(SurveyTask task, HullOnPaper paper) {
        List<MarkedSpot> spots = new ArrayList<>();
        for (LaidFinding laid : task.findings()) {
            for (Spot spot : laid.spots()) {
                if (spot.face() == Spot.Face.TOPSIDES) {
                    spots.add(new MarkedSpot(laid.finding().number(), paper.lookingForward(spot.point().getY(), spot.point().getZ()), Seen.NEAR));
                }
            }
        }
        return spots;
    }
}
