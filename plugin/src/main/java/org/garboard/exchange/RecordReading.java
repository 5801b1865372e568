package org.garboard.exchange;

import java.util.List;
import org.garboard.hull.Fit;
import org.garboard.job.RecordedSet;

/** What came of reading a record. */
public sealed interface RecordReading {

    /**
     * A sound record.
     *
     * @param set what was decided
     * @param fit how the hull was drawn from the table
     * @param outputs the files beside the record, in its order
     * @param refused what could not be drawn, and why
     * @param surveySheets how many of them show findings of a surveyor
     * @param surface the hull surface as it stands there
     */
    record Read(RecordedSet set, Fit fit, List<FileHash> outputs, List<String> refused, int surveySheets,
                RecordedSurface surface) implements RecordReading {
        public Read {
            outputs = List.copyOf(outputs);
            refused = List.copyOf(refused);
        }
    }

    /** What is wrong with the file. */
    record Faulty(List<FileFault> faults) implements RecordReading {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}
