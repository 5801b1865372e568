package org.garboard.drawing.flow;

import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.layout.Paper;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetSubject;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish;
import org.garboard.offsets.HullOffsets;

/**
 * What a picture of the flow is drawn from.
 *
 * @param paper it is drawn on, the wish's or another that is tried
 * @param lettering of the paper, or smaller
 */
record FlowTask(HullOffsets table, Hull hull, FlowPicture picture, DrawingWish drawing, String tableFile, Provenance provenance,
                Paper paper, Lettering lettering) implements SheetSubject<FlowTask> {

    private static final String STATUS = "FOR CHECK - computed, not measured on the boat";

    FlowTask(HullOffsets table, Hull hull, FlowPicture picture, DrawingWish drawing, String tableFile, Provenance provenance) {
        this(table, hull, picture, drawing, tableFile, provenance, SheetSubject.paper(drawing),
            Lettering.forPaper(SheetSubject.paper(drawing)));
    }

    @Override
    public FlowTask on(Paper other) {
        return new FlowTask(table, hull, picture, drawing, tableFile, provenance, other, Lettering.forPaper(other));
    }

    @Override
    public FlowTask lettered(Lettering other) {
        return new FlowTask(table, hull, picture, drawing, tableFile, provenance, paper, other);
    }

    @Override
    public String boat() {
        return table.title();
    }

    @Override
    public String sheets() {
        return "of 1";
    }

    @Override
    public String status() {
        return STATUS;
    }
}
