package org.garboard.drawing.lines;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.garboard.drawing.layout.Notes;
import org.garboard.drawing.sheets.Figures;
import org.garboard.lines.Comb;
import org.garboard.lines.DrawnLine;
import org.garboard.lines.Tooth;

/** What a comb says, in words. */
final class CombNotes {
    /** Teeth shorter than this part of the longest do not count as a change of sides: our choice, a pen's width. */
    private static final double COUNTS = 0.005;

    private CombNotes() {
    }

    static Notes of(LinesTask task, CombTask comb) {
        List<String> notes = new ArrayList<>();
        notes.add("Teeth stand square to the line, away from its centre of curvature, as long as the line is curved. Fair: their "
                + "tips run smoothly, and they change sides only where the line is meant to turn.");
        for (Comb each : comb.combs()) {
            notes.add(figures(comb.line(), each, task.figures()));
        }
        notes.add((comb.line() instanceof DrawnLine.Section ? "WL: waterline, height above the base line. "
                : "Stations with their distance aft of " + task.table().origin() + ". ") + LinesNotes.surface(task));
        return Notes.numbered("NOTES", notes);
    }

    private static String figures(DrawnLine line, Comb comb, Figures figures) {
        Tooth sharpest = comb.branches().stream().flatMap(List::stream)
                .max(Comparator.comparingDouble(Tooth::curvature)).orElseThrow();
        String view = line instanceof DrawnLine.Cut ? "The line is " : comb.square().getZ() != 0 ? "Seen from above it is " : "In profile it is ";
        if (!(sharpest.curvature() > 1e-9)) {
            return view + "straight throughout.";
        }
        String where = comb.square().getX() != 0 ? figures.length(sharpest.foot().getZ()) + " above base"
                : "x " + figures.length(sharpest.foot().getX());
        int turns = turns(comb, sharpest.curvature());
        return view + "sharpest at " + where + ", curvature " + CombScale.words(sharpest.curvature(), figures)
                + "; the teeth change sides " + (turns == 0 ? "nowhere." : turns == 1 ? "once." : turns + " times.");
    }

    private static int turns(Comb comb, double largest) {
        int turns = 0;
        for (List<Tooth> branch : comb.branches()) {
            Tooth before = null;
            for (Tooth tooth : branch) {
                if (tooth.curvature() > COUNTS * largest) {
                    turns += before != null && before.away().dot(tooth.away()) < 0 ? 1 : 0;
                    before = tooth;
                }
            }
        }
        return turns;
    }
}
