package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The demo jobs are sound, and each shows the answer it is there to show. */
class DemoJobsTest {
    private static final Path DEMO = Path.of("src/main/demo");

    @ParameterizedTest
    @CsvSource({"outboard-22,flush through-hull", "outboard-39,keel pocket", "stepped-38,flush through-hull",
        "inboard-58,through-hull with fairing block", "displacement-30,flush through-hull"})
    void eachShowsItsOwnAnswer(String boat, String mount) {
        Shell shell = Shell.run("site", DEMO.resolve(boat).resolve("job.xml"));
        assertEquals(0, shell.code(), shell.err());
        assertTrue(shell.out().contains("\nAdvised: " + mount + ", "), shell.out());
    }

    /** On the garboards beside the keel, with trim and heel as blocked told on the sheet, and not past what was measured. */
    @Test
    void theTakenOffBoatSaysHowSheStood() {
        Path boat = DEMO.resolve("displacement-30");
        Shell table = Shell.run("table", boat.resolve("offsets.csv"));
        assertTrue(table.out().contains("AS BLOCKED WHEN MEASURED: trim 0.85 deg bow up, heel 1.29 deg to port."), table.out());
        assertTrue(table.out().contains("Where the transom stands is not fixed."), table.out());
        Shell beyond = Shell.run("site", boat.resolve("job.xml"), "--at", "-7.2,0.3");
        assertEquals(4, beyond.code(), beyond.out() + beyond.err());
        assertTrue(beyond.out().contains("seat on the skin"), beyond.out());
    }

    /** Ahead of the first step, which governs; just abaft of it lies air, and at a place there that is said. */
    @Test
    void theSteppedBoatsPlaceLiesAheadOfItsFirstStep() {
        Path job = DEMO.resolve("stepped-38").resolve("job.xml");
        Shell shell = Shell.run("site", job);
        assertTrue(shell.out().contains("Governing: room ahead of a step ("), shell.out());
        Shell behind = Shell.run("site", job, "--at", "8,0.2");
        assertTrue(behind.out().contains("NOT MET: clear of the air behind steps: The place lies in the air behind a step"), behind.out());
    }
}
