package org.garboard.findingsfile;

import java.util.List;

/** What came of reading a file of findings. */
public sealed interface FindingsReading {

    /** Sound as far as the file alone shows; whether every place lies on the boat is asked of her hull. */
    record Read(List<WrittenFinding> findings) implements FindingsReading {
        public Read {
            findings = List.copyOf(findings);
        }
    }

    /** Everything that is wrong with the file, in the order of its lines. */
    record Faulty(List<FindingsFault> faults) implements FindingsReading {
        public Faulty {
            faults = List.copyOf(faults);
        }
    }
}
