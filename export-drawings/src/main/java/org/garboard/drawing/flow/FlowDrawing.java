package org.garboard.drawing.flow;

import java.util.List;
import org.garboard.drawing.layout.DoesNotFit;
import org.garboard.drawing.sheets.DrawnSet;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetFormat;
import org.garboard.drawing.sheets.SheetRefusal;
import org.garboard.drawing.sheets.SheetSetter;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish;
import org.garboard.offsets.HullOffsets;

/** Pictures of the flow as files. The same input gives the same bytes. */
public final class FlowDrawing {

    /** Stands near the beginning of every file of these. */
    public static final String MARK = ": Flow along the bottom";
    static final String TITLE = "Flow along the bottom";

    private FlowDrawing() {
    }

    /**
     * The bottom plan with its lines and shadows: one file, or the reason why the paper does not hold it.
     *
     * @param name of the file without its ending
     */
    public static DrawnSet bottomPlan(String name, HullOffsets table, Hull hull, FlowPicture picture, DrawingWish drawing,
                                      String tableFile, Provenance provenance, SheetFormat format) {
        FlowTask task = new FlowTask(table, hull, picture, drawing, tableFile, provenance);
        try {
            return new DrawnSet(List.of(format.drawing(name, SheetSetter.set(task, FlowSheet::new))), List.of());
        } catch (DoesNotFit refusal) {
            return new DrawnSet(List.of(), List.of(new SheetRefusal(name, refusal.reason(), refusal.remedy())));
        }
    }
}
