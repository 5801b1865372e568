package org.garboard.drawing.flow;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.layout.Notes;
import org.garboard.flow.shadow.Shadow;
import org.garboard.flow.shadow.Sheds;
import org.garboard.units.FixedDecimal;

/** What a reader of the picture must know of it. */
final class FlowNotes {

    private FlowNotes() {
    }

    static Notes of(FlowPicture picture) {
        List<String> notes = new ArrayList<>();
        if (!picture.shadows().isEmpty()) {
            notes.add("Wakes spread " + degrees(Sheds.LIKELY.degrees()) + " to either side of the flow, of flush fittings by at most "
                + FixedDecimal.format(1000 * Sheds.FLUSH.cap(), 0) + " mm; the line outside is at " + degrees(Sheds.ADVISORY.degrees())
                + ". Both are upper bounds for turbulent wedges; no source is known for bubbles behind fittings and strakes.");
            for (Shadow shadow : picture.shadows()) {
                if (Double.isFinite(shadow.fading())) {
                    notes.add("The wake of " + shadow.feature().name() + " is taken to fade over "
                        + FixedDecimal.format(shadow.fading(), 1) + " m (our choice).");
                }
            }
        }
        notes.addAll(picture.notes());
        notes.add("What is not listed on the bottom throws no shadow here: look before cutting.");
        return Notes.numbered("NOTES", notes);
    }

    private static String degrees(double angle) {
        return FixedDecimal.format(angle, 0) + " degrees";
    }
}
