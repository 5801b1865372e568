package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cutout.Pocket;
import org.garboard.drawing.layout.Notes;
import org.garboard.units.FixedDecimal;

/** What a reader of the pocket sheet must know of its figures, and what its cautions add to the usual. */
final class PocketNotes {

    private PocketNotes() {
    }

    static Notes of(SheetTask task, Pocket pocket) {
        List<String> notes = new ArrayList<>(List.of(
                "Depths run from the keel line, square to the floor: lay a straightedge along the keel over the opening.",
                "Finished outside faces. Walls stand square to the floor, without draft angle; edges are drawn sharp.",
                "Cut file pocket-outside-up_mm_1to1.dxf: true millimetres, origin in the middle of the pocket on the keel "
                        + "line, bow to +x, starboard to +y, outside up. Its ticks mark the corners for the diagonals. Kerf and tool offset are not allowed for. "
                        + flattening(pocket.developmentStretch() * 1000),
                SurfaceNote.of(task)));
        notes.addAll(task.table().remarks());
        return Notes.numbered("NOTES", notes);
    }

    private static String flattening(double stretchMm) {
        return stretchMm < 0.05 ? "Laying the skin flat changes no length."
                : "Laying the skin flat changes lengths by up to " + FixedDecimal.format(stretchMm, 1) + " mm.";
    }

    static Notes cautions(SheetTask task) {
        List<String> more = new ArrayList<>();
        double lean = task.job().transducer().elementInclination().radians();
        if (lean > 0) {
            more.add("The floor is level: the beam of an element that leans " + Figures.degrees(lean) + " points so far off to "
                    + "one side. Take a body whose element stands upright.");
        }
        more.add("Sheet 1 lists under LOOK BEFORE CUTTING what is NOT KNOWN of this place: answer each first.");
        more.add("Structure: not to be cut until whoever answers for the boat's structure has approved the pocket. No keelson, "
                + "floor, bearer or keel bolt may be cut.");
        return Cautions.with(task.table(), more);
    }
}
