package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.garboard.cli.start.Beginning;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class NewCommandTest {
    @TempDir
    private Path folder;

    @Test
    void theDemosAreThoseThatTheProgramComesWith() throws IOException {
        try (Stream<Path> demos = Files.list(Path.of("src/main/demo"))) {
            assertEquals(demos.map(demo -> demo.getFileName().toString()).sorted().toList(), Beginning.DEMOS.stream().sorted().toList());
        }
    }

    /** Nothing of the demo boat passes for the new one: the job is refused for its mark alone, the table for want of figures. */
    @ParameterizedTest
    @ValueSource(strings = {"outboard-22", "outboard-39", "stepped-38", "inboard-58", "displacement-30"})
    void beginsWhatIsRefusedUntilItIsFilledIn(String demo) throws IOException {
        Path boat = folder.resolve("sea-otter_2");
        Shell begun = Shell.run("new", boat.toString(), "--like", demo);
        assertEquals(new Shell(0, "Begun in " + boat + ": job.xml, offsets.csv; README.txt says what to do next.\n", ""), begun);
        Shell job = Shell.run("site", boat.resolve("job.xml").toString());
        assertEquals(3, job.code());
        assertTrue(job.err().matches("(?s).*job\\.xml:9:\\d+: the job says like=\"" + demo + "\": it began with the figures of that demo boat; "
            + "when each of them is your boat's, take like away\n"), job.err());
        assertEquals(1, job.err().lines().count(), job.err());
        Shell table = Shell.run("table", boat.resolve("offsets.csv").toString());
        assertEquals(3, table.code(), table.out());
        assertTrue(table.err().lines().allMatch(line -> line.startsWith(boat.resolve("offsets.csv").toString())), table.err());
        String blank = Files.readString(boat.resolve("offsets.csv"));
        assertTrue(blank.lines().findFirst().orElseThrow().endsWith("Sea otter 2"), blank);
        assertFalse(blank.contains("invented"));
    }

    /** Cell for cell: only figures are gone, and every one but stations' names and what a line's name says. */
    @ParameterizedTest
    @ValueSource(strings = {"outboard-22", "outboard-39", "stepped-38", "inboard-58", "displacement-30"})
    void keepsTheLayoutOfTheTable(String demo) throws IOException {
        Shell.run("new", folder.resolve("it").toString(), "--like", demo);
        List<String> filled = Files.readAllLines(Path.of("src/main/demo", demo, "offsets.csv")).stream()
            .filter(line -> !line.startsWith("Note")).toList();
        List<String> blank = Files.readAllLines(folder.resolve("it/offsets.csv"));
        assertEquals(filled.size(), blank.size());
        String delimiter = demo.equals("inboard-58") ? ";" : ",";
        int gone = 0;
        for (int k = 1; k < filled.size(); k++) {
            String[] full = filled.get(k).split(delimiter, -1);
            String[] empty = blank.get(k).split(delimiter, -1);
            assertEquals(full.length, empty.length, filled.get(k));
            assertEquals(full[0], empty[0]);
            for (int cell = 1; cell < full.length; cell++) {
                assertTrue(empty[cell].isEmpty() || empty[cell].equals(full[cell]), blank.get(k));
                assertTrue(empty[cell].isEmpty() || full[0].startsWith("Station") || full[0].equals("Step at") && cell == 1 || !full[cell].matches("[0-9][0-9.,-]+"), blank.get(k));
                gone += empty[cell].equals(full[cell]) ? 0 : 1;
            }
        }
        assertTrue(gone > 100, demo + ": " + gone);
    }

    @Test
    void writesOverNothing() throws IOException {
        Files.writeString(folder.resolve("offsets.csv"), "mine");
        Shell refused = Shell.run("new", folder.toString(), "--like", "outboard-22");
        assertEquals(new Shell(2, "", folder.resolve("offsets.csv") + " is there already; nothing was written. Name another folder\n"), refused);
        try (Stream<Path> left = Files.list(folder)) {
            assertEquals("offsets.csv", left.map(file -> file.getFileName().toString()).collect(Collectors.joining(" ")));
        }
        assertEquals("mine", Files.readString(folder.resolve("offsets.csv")));
    }

    @Test
    void tellsWhichDemosThereAre() {
        Shell refused = Shell.run("new", folder.resolve("x").toString(), "--like", "rowing-boat");
        assertEquals(new Shell(2, "", """
            garboard new: --like: there is no demo boat "rowing-boat"; it is one of outboard-22, outboard-39, stepped-38, inboard-58, displacement-30
            Try 'garboard new --help'.
            """), refused);
        assertFalse(Files.exists(folder.resolve("x")));
    }
}
