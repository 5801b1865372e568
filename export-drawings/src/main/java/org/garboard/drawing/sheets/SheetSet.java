package org.garboard.drawing.sheets;

import org.garboard.hull.Hull;
import org.garboard.job.SitingRecord;
import org.garboard.offsets.OffsetTable;

/**
 * The set of drawings of one job: {@code sheet-1-siting.dxf} and {@code .svg} always; where a
 * pocket is built, {@code sheet-4-pocket.dxf} and {@code .svg} and the cut file
 * {@code pocket-outside-up_mm_1to1.dxf}.
 */
public final class SheetSet {

    private SheetSet() {
    }

    /** Draws the set. The same input gives the same bytes. */
    public static DrawnSet draw(SitingRecord record, OffsetTable table, Hull hull, Provenance provenance) {
        throw new IllegalStateException("not drawn yet");
    }
}
