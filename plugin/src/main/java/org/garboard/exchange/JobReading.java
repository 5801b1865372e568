package org.garboard.exchange;

import java.util.List;
import org.garboard.job.Job;

/** What came of reading a job file. */
public sealed interface JobReading {

    /** A sound file: a job for each of its transducers, in its order. */
    record Read(List<Job> jobs) implements JobReading {
        public Read {
            jobs = List.copyOf(jobs);
        }

        /** The first of them: what is told of the boat is the same in all. */
        public Job job() {
            return jobs.get(0);
        }
    }

    /** Everything that is wrong with the file, in the order of its lines. */
    record Faulty(List<FileFault> faults) implements JobReading {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}
