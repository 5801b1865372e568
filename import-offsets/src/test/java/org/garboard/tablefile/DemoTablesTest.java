package org.garboard.tablefile;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;

/** The demo boats' tables are those that {@link DemoTables} makes; run its main after a change. */
class DemoTablesTest {
    private static final Path DEMO = Path.of("..", "plugin", "src", "main", "demo");

    @Test
    void frozen_outboard22IsAsGenerated() throws IOException {
        assertEquals(DemoTables.outboard22(), checkedIn("outboard-22"));
    }

    @Test
    void frozen_outboard39IsAsGenerated() throws IOException {
        assertEquals(DemoTables.outboard39(), checkedIn("outboard-39"));
    }

    @Test
    void frozen_inboard58IsAsGenerated() throws IOException {
        assertEquals(DemoTables.inboard58(), checkedIn("inboard-58"));
    }

    @Test
    void frozen_stepped38IsAsGenerated() throws IOException {
        assertEquals(SteppedTable.stepped38(), checkedIn("stepped-38"));
    }

    @Test
    void frozen_displacement30IsAsGenerated() throws IOException {
        assertEquals(DisplacementTakeOff.text(), checkedIn("displacement-30"));
    }

    private static String checkedIn(String boat) throws IOException {
        return Files.readString(DEMO.resolve(boat).resolve("offsets.csv"), StandardCharsets.UTF_8);
    }
}
