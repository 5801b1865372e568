package org.garboard.drawing.lines;

import java.util.List;
import org.garboard.drawing.layout.DoesNotFit;
import org.garboard.drawing.sheets.DrawnSet;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetFormat;
import org.garboard.drawing.sheets.SheetRefusal;
import org.garboard.drawing.sheets.SheetSetter;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish;
import org.garboard.lines.DrawnLine;
import org.garboard.offsets.HullOffsets;

/** Lines drawings and pictures of curvature as files. The same input gives the same bytes. */
public final class LinesDrawing {

    /** Stands near the beginning of every file of these. */
    public static final String MARK = ": Lines";
    static final String TITLE = "Lines";

    private LinesDrawing() {
    }

    /** The lines in three views: one file, or the reason why the paper does not hold them. */
    public static DrawnSet lines(HullOffsets table, Hull hull, LinesWish wish, String tableFile, Provenance provenance,
                                 SheetFormat format) {
        return drawn("lines", new LinesTask(table, hull, wish, tableFile, provenance), LinesSheet::new, format);
    }

    /**
     * The curvature of one line: one file, or the reason why the paper does not hold it.
     *
     * @param line that meets the hull
     */
    public static DrawnSet comb(HullOffsets table, Hull hull, DrawnLine line, DrawingWish drawing,
                                String tableFile, Provenance provenance, SheetFormat format) {
        LinesWish wish = new LinesWish(drawing, List.of(), List.of(), List.of(), List.of());
        return drawn("comb", new LinesTask(table, hull, wish, tableFile, provenance),
                task -> new CombSheet(task, line), format);
    }

    private static DrawnSet drawn(String name, LinesTask task, SheetSetter.Maker<LinesTask> maker, SheetFormat format) {
        try {
            return new DrawnSet(List.of(format.drawing(name, SheetSetter.set(task, maker))), List.of());
        } catch (DoesNotFit refusal) {
            return new DrawnSet(List.of(), List.of(new SheetRefusal(name, refusal.reason(), refusal.remedy())));
        }
    }
}
