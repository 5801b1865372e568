package org.garboard.drawing.revision;

import java.util.List;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.layout.DoesNotFit;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetSetter;
import org.garboard.revision.Comparison;

/** Sets the sheets 8 of a revision. The same input gives the same sheets. */
public final class RevisionDrawing {
    /** Stands near the beginning of every file of these. */
    public static final String MARK = ": Revisions";

    private RevisionDrawing() {
    }

    /**
     * The later record over the earlier, on as many pages as the table fills.
     *
     * @throws DoesNotFit when the paper is too small
     */
    public static List<Sheet> of(DrawnRecord earlier, DrawnRecord later, Provenance provenance) {
        return SheetSetter.pages(new RevisionTask(earlier, later, Comparison.of(earlier.set(), later.set()), provenance), RevisionSheet::new);
    }
}
