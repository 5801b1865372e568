package org.garboard.exchange;

import java.util.List;
import org.garboard.job.Job;

/** What came of reading a job file. */
public sealed interface JobReading {

    /** A sound job. */
    record Read(Job job) implements JobReading {
    }

    /** Everything that is wrong with the file, in the order of its lines. */
    record Faulty(List<FileFault> faults) implements JobReading {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}
