package org.garboard.drawing.sheets;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.layout.DoesNotFit;

/**
 * A sheet of the set that is to be drawn.
 *
 * @param file its name without an ending
 * @param called in words
 */
record WantedSheet(String file, String called, SheetSetter.Maker<SheetTask> maker) {

    /** What came of it: its pages and a file of each in each format, or why it cannot be drawn. */
    record Drawn(List<Sheet> pages, List<NamedDrawing> files, Optional<SheetRefusal> refusal) {
    }

    Drawn on(SheetTask task) {
        try {
            List<Sheet> pages = SheetSetter.pages(task, maker);
            List<NamedDrawing> files = new ArrayList<>();
            for (int i = 0; i < pages.size(); i++) {
                for (SheetFormat format : SheetFormat.values()) {
                    files.add(format.drawing(i == 0 ? file : file + "-page-" + (i + 1), pages.get(i)));
                }
            }
            return new Drawn(pages, files, Optional.empty());
        } catch (DoesNotFit refusal) {
            return new Drawn(List.of(), List.of(), Optional.of(new SheetRefusal(called, refusal.reason(), refusal.remedy())));
        }
    }
}
