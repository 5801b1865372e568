package org.garboard.tablefile;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

/** What holds whatever the bytes: they are a table, a take-off, or faulty with at least one message, each of one line. */
final class AnyBytes {

    private AnyBytes() {
    }

    static void read(String fileName, byte[] content) {
        if (TableFile.read(fileName, content) instanceof TableReading.Faulty faulty) {
            assertFalse(faulty.problems().isEmpty());
            for (TableProblem problem : faulty.problems()) {
                assertFalse(problem.reason().isBlank());
                assertEquals(1, problem.message().lines().count(), problem.message());
            }
        }
    }
}
