package org.garboard.report;

import java.util.List;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.hull.Hull;
import org.garboard.mount.water.WaterAtSpeed;
import org.garboard.offsets.HullOffsets;

/**
 * What a report is written from.
 *
 * @param all what was decided for each transducer, at least one
 * @param speeds how she runs, slowest first; none where that is not told
 * @param notDrawn sheets and parts that could not be made, each with its reason and what would work
 * @param inputs the files that were read
 * @param outputs the files that were written beside the report
 */
public record ReportTask(List<Reported> all, HullOffsets table, Hull hull, List<WaterAtSpeed> speeds, List<String> notDrawn,
                         List<NamedHash> inputs, List<NamedHash> outputs, Provenance provenance) {
    public ReportTask {
        all = List.copyOf(all);
        speeds = List.copyOf(speeds);
        notDrawn = List.copyOf(notDrawn);
        inputs = List.copyOf(inputs);
        outputs = List.copyOf(outputs);
    }

    /** The boat with her hull number. */
    String boat() {
        var job = all.get(0).decided().job();
        return job.hullNumber().isBlank() ? job.boat() : job.boat() + ", hull no. " + job.hullNumber();
    }
}
