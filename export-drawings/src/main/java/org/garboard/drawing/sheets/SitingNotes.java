package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.craft.Transducer;
import org.garboard.drawing.layout.Notes;
import org.garboard.siting.MountSiting;

/** What a reader of the siting sheet must know of its figures, and what could not be done. */
final class SitingNotes {

    private final SheetTask task;
    private final List<String> notes = new ArrayList<>();

    private SitingNotes(SheetTask task) {
        this.task = task;
    }

    static Notes of(SheetTask task, List<MarkedSite> sites) {
        SitingNotes notes = new SitingNotes(task);
        notes.refusals(sites);
        notes.transducer();
        notes.figures();
        return Notes.numbered("NOTES", notes.notes);
    }

    private void refusals(List<MarkedSite> sites) {
        if (task.record().advised().isEmpty()) {
            notes.add("NO PLACE FOUND for any mount. Marked is where the governing check is least exceeded.");
        }
        for (MountSiting siting : task.record().sitings()) {
            if (sites.stream().noneMatch(marked -> marked.siting().equals(siting))) {
                notes.add("No place at all was measured for: " + siting.mount().words() + ".");
            }
        }
        if (!task.record().refusal().isBlank()) {
            notes.add("No pocket is drawn: " + task.record().refusal());
        }
    }

    private void transducer() {
        Transducer body = task.job().transducer();
        Figures figures = task.figures();
        StringBuilder words = new StringBuilder(body.name()).append(": length ").append(figures.fine(body.length()))
                .append(", width ").append(figures.fine(body.width())).append(", height ").append(figures.fine(body.height()));
        if (body.stemDiameter() > 0) {
            words.append(", stem Ø").append(figures.fine(body.stemDiameter()));
        }
        notes.add(words.append('.').toString());
        if (body.elementInclination().radians() > 0) {
            notes.add("The element leans " + Figures.degrees(body.elementInclination().radians())
                    + " inside its housing, TOWARDS THE KEEL; turned round, the error doubles. The hole stays square to the skin.");
        }
    }

    private void figures() {
        notes.add("SKIN: tape bent along the skin. PLAN: level distance. Distances from the ends are level, along the base line.");
        notes.add("To the outside of the skin. The table is drawn to " + task.table().surface().words() + ".");
    }
}
