package org.garboard.tablefile;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.garboard.offsets.OffsetTable;

/** Reading tables in tests. */
final class Tables {

    private Tables() {
    }

    static TableReading reading(String text) {
        return TableFile.read("boat.csv", text.getBytes(StandardCharsets.UTF_8));
    }

    static OffsetTable read(String text) {
        TableReading reading = reading(text);
        return assertInstanceOf(TableReading.Read.class, reading, reading::toString).table();
    }

    /** All messages, one a line. */
    static String problems(String text) {
        return problems(text.getBytes(StandardCharsets.UTF_8));
    }

    static String problems(byte[] content) {
        return messages(TableFile.read("boat.csv", content));
    }

    static String messages(TableReading reading) {
        List<TableProblem> problems = assertInstanceOf(TableReading.Faulty.class, reading).problems();
        return problems.stream().map(TableProblem::message).collect(Collectors.joining("\n"));
    }

    static String resource(String name) {
        try (InputStream stream = Tables.class.getResourceAsStream("/tables/" + name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException broken) {
            throw new AssertionError(broken);
        }
    }
}
