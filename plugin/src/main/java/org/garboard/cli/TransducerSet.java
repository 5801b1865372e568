package org.garboard.cli;

import java.util.ArrayList;
import java.util.List;
import org.garboard.cli.files.OutputFile;
import org.garboard.drawing.sheets.DrawnSet;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetRefusal;
import org.garboard.drawing.sheets.SheetSet;
import org.garboard.hull.Hull;
import org.garboard.job.SitingRecord;
import org.garboard.mount.water.RunningWater;
import org.garboard.offsets.HullOffsets;

/**
 * Everything that a run writes for one transducer: sheets, and the parts that are cut by them.
 *
 * @param words what the yard has to know beside the files
 */
record TransducerSet(List<OutputFile> files, List<SheetRefusal> refusals, List<String> words) {

    /** @param number of the transducer in the job; the files of the second are called "2-sheet-1-siting.dxf" and so on */
    static TransducerSet of(int number, SitingRecord decided, HullOffsets table, Hull hull, RunningWater running, Provenance provenance) {
        PartsAtSite parts = PartsAtSite.of(hull, decided, running);
        DrawnSet set = SheetSet.draw(decided, table, hull, provenance, parts.made(), running.over(decided.features().laid()));
        String prefix = number == 1 ? "" : number + "-";
        List<OutputFile> files = new ArrayList<>();
        set.drawings().forEach(drawing -> files.add(new OutputFile(prefix + drawing.fileName(), drawing.content())));
        // what is to be looked at before cutting stands on the sheets: without them there are no parts
        if (set.refusals().isEmpty()) {
            parts.files().forEach(file -> files.add(file.prefixed(prefix)));
        }
        List<SheetRefusal> refusals = new ArrayList<>();
        set.refusals().forEach(refusal -> refusals.add(new SheetRefusal(prefix + refusal.sheet(), refusal.reason(), refusal.remedy())));
        parts.refusals().forEach(refusal -> refusals.add(new SheetRefusal(prefix + refusal.sheet(), refusal.reason(), refusal.remedy())));
        return new TransducerSet(files, refusals, parts.words());
    }
}
