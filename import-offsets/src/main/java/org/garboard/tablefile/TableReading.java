package org.garboard.tablefile;

import java.util.List;
import java.util.Optional;
import org.garboard.offsets.OffsetTable;
import org.garboard.takeoff.LevelledOffsets;

/** What came of reading a file. */
public sealed interface TableReading permits TableReading.Read, TableReading.TakenOff, TableReading.Faulty {

    /**
     * The file is a table without faults.
     *
     * @param table in metres
     * @param notes heading rows that the program does not use, as they stand, their cells joined by commas
     * @param written the table with its cells in the file
     */
    record Read(OffsetTable table, List<String> notes, WrittenTable written) implements TableReading {
        public Read {
            notes = List.copyOf(notes);
        }
    }

    /**
     * The file is a take-off, brought into the boat's own frame.
     *
     * @param offsets the skin as far as it was measured
     * @param notes heading rows that the program does not use
     */
    record TakenOff(LevelledOffsets offsets, List<String> notes) implements TableReading {
        public TakenOff {
            notes = List.copyOf(notes);
        }
    }

    /**
     * The file cannot be used.
     *
     * @param problems everything that was found, from the top of the file down
     * @param written the table with its cells in the file, if all of them could be read
     */
    record Faulty(List<TableProblem> problems, Optional<WrittenTable> written) implements TableReading {
        public Faulty {
            problems = List.copyOf(problems);
        }
    }
}
