package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The demo jobs are sound, and each shows the answer it is there to show. */
class DemoJobsTest {
    private static final Path DEMO = Path.of("src/main/demo");

    @ParameterizedTest
    @CsvSource({"outboard-22,flush through-hull", "outboard-39,keel pocket"})
    void eachShowsItsOwnAnswer(String boat, String mount) {
        Shell shell = Shell.run("site", DEMO.resolve(boat).resolve("job.xml"));
        assertEquals(0, shell.code(), shell.err());
        assertTrue(shell.out().contains("\nAdvised: " + mount + ", "), shell.out());
    }
}
