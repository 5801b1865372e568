package org.garboard.tablefile;

import java.util.List;
import org.garboard.offsets.OffsetTable;

/** What came of reading a file. */
public sealed interface TableReading permits TableReading.Read, TableReading.Faulty {

    /**
     * The file is a table without faults.
     *
     * @param table in metres
     * @param notes heading rows that the program does not use, as they stand, their cells joined by commas
     */
    record Read(OffsetTable table, List<String> notes) implements TableReading {
        public Read {
            notes = List.copyOf(notes);
        }
    }

    /**
     * The file cannot be used.
     *
     * @param problems everything that was found, from the top of the file down
     */
    record Faulty(List<TableProblem> problems) implements TableReading {
        public Faulty {
            problems = List.copyOf(problems);
        }
    }
}
