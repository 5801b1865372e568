package org.garboard.drawing.lines;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.layout.Notes;
import org.garboard.drawing.sheets.Figures;
import org.garboard.lines.DrawnLine.Diagonal;
import org.garboard.hull.UnsureStretch;
import org.garboard.units.FixedDecimal;

/** What a reader of the lines must know of them. */
final class LinesNotes {

    private LinesNotes() {
    }

    /** What a diagonal is called on the sheet. */
    static String mark(int index) {
        return "D" + (index + 1);
    }

    static Notes of(LinesTask task) {
        List<String> notes = new ArrayList<>();
        notes.add("WL: waterline, height above the base line. B: buttock, distance from the centreline.");
        List<Diagonal> diagonals = task.wish().diagonals();
        for (int i = 0; i < diagonals.size(); i++) {
            Diagonal diagonal = diagonals.get(i);
            notes.add(mark(i) + ": diagonal from the centreline " + task.figures().length(diagonal.z())
                    + " above the base line, down and outward " + Figures.degrees(diagonal.below().radians())
                    + " below the horizontal.");
        }
        notes.add(surface(task));
        notes.addAll(task.table().remarks());
        UnsureStretch.of(task.hull()).forEach(stretch -> notes.add(stretch.words()));
        return Notes.numbered("NOTES", notes);
    }

    /** To which surface the lines are, and how near they keep to the table. */
    static String surface(LinesTask task) {
        double within = task.hull().within();
        return "To the outside of the skin. " + (within > 0
                ? "Faired: the table's surface keeps within " + FixedDecimal.format(within * 1000, 2) + " mm of every reading of the table."
                : "Drawn through every value of the table.");
    }
}
