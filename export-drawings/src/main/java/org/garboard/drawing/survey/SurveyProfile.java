package org.garboard.drawing.survey;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Scale;
import org.garboard.drawing.View;
import org.garboard.drawing.sheets.HullAside;
import org.garboard.drawing.sheets.HullOnPaper;
import org.garboard.drawing.sheets.ViewTitle;
import org.garboard.drawing.survey.MarkedSpot.Seen;
import org.garboard.survey.LaidFinding;
import org.garboard.survey.Spot;

/** The profile from starboard, bow to the right: what was found above the bottom, on either side. */
final class SurveyProfile {

    private SurveyProfile() {
    }

    static View of(SurveyTask task, Scale scale) {
        HullOnPaper paper = new HullOnPaper(task.hull(), scale);
        double height = task.lettering().figures();
        List<Entity> shown = new ArrayList<>(HullAside.lines(task.hull(), task.table(), paper, height));
        shown.addAll(HullAside.stations(task.hull(), task.table(), paper, task.figures(), height));
        Box box = View.around("hull", shown).frame();
        List<MarkedSpot> spots = spots(task, paper);
        shown.addAll(BalloonRows.of(spots, new Seats.Rows(0, paper.length(), box.top(), List.of()), height));
        boolean far = spots.stream().anyMatch(spot -> spot.seen() == Seen.FAR);
        return ViewTitle.above("PROFILE FROM STARBOARD", "Bow right. Stations with their distance aft of " + task.table().origin() + "."
            + (far ? " A ring instead of a dot: on the far side, to port." : ""), shown, task.lettering(), 0);
    }

    private static List<MarkedSpot> spots(SurveyTask task, HullOnPaper paper) {
        List<MarkedSpot> spots = new ArrayList<>();
        for (LaidFinding laid : task.findings()) {
            for (Spot spot : laid.spots()) {
                if (spot.face() == Spot.Face.TOPSIDES) {
                    spots.add(new MarkedSpot(laid.finding().number(), paper.profile(spot.point().getX(), spot.point().getZ()),
                        spot.point().getY() < 0 ? Seen.FAR : Seen.NEAR));
                }
            }
        }
        return spots;
    }
}
