package org.garboard.drawing.revision;

import java.util.List;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.Paper;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetSubject;
import org.garboard.job.DrawingWish;
import org.garboard.offsets.HullOffsets;
import org.garboard.revision.Change;

/**
 * What a sheet of revisions is drawn from.
 *
 * @param changes everything that differs
 * @param paper it is drawn on, the later record's or another that is tried
 * @param lettering of the paper, or smaller
 */
record RevisionTask(DrawnRecord earlier, DrawnRecord later, List<Change> changes, Provenance provenance, Paper paper, Lettering lettering)
        implements SheetSubject<RevisionTask> {

    private static final String STATUS = "REVISION - what moved; work from the later set alone";

    RevisionTask(DrawnRecord earlier, DrawnRecord later, List<Change> changes, Provenance provenance) {
        this(earlier, later, changes, provenance, SheetSubject.paper(later.set().drawing()), Lettering.forPaper(SheetSubject.paper(later.set().drawing())));
    }

    @Override
    public RevisionTask on(Paper other) {
        return new RevisionTask(earlier, later, changes, provenance, other, Lettering.forPaper(other));
    }

    @Override
    public RevisionTask lettered(Lettering other) {
        return new RevisionTask(earlier, later, changes, provenance, paper, other);
    }

    @Override
    public DrawingWish drawing() {
        return later.set().drawing();
    }

    @Override
    public HullOffsets table() {
        return later.table();
    }

    @Override
    public String tableFile() {
        return later.set().tableFile();
    }

    @Override
    public String boat() {
        return later.set().named();
    }

    @Override
    public String sheets() {
        return "revisions";
    }

    @Override
    public String status() {
        return STATUS;
    }
}
