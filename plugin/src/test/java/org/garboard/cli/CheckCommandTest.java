package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class CheckCommandTest {
    private static final Path DEMO = Path.of("src/main/demo");

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"outboard-22", "outboard-39", "stepped-38", "inboard-58", "displacement-30"})
    void findsNothingWrongOrOddWithTheDemos(String boat) {
        Shell check = Shell.run("check", DEMO.resolve(boat).resolve("job.xml"));
        assertEquals(0, check.code(), check.err());
        assertTrue(check.out().startsWith("Nothing odd was found.\n"), check.out());
    }

    /** Job and table are both looked through, though the job alone would keep them from being used. */
    @Test
    void tellsTheFaultsOfJobAndTableInOneGo() throws IOException {
        String job = demo("outboard-22", "job.xml");
        Files.writeString(folder.resolve("job.xml"), job.replaceFirst("<draught unit=\"[a-z]+\">[0-9.]+", "<draught unit=\"m\">-1"));
        Files.writeString(folder.resolve("offsets.csv"), demo("outboard-22", "offsets.csv").replace("Chine,3-1-7,", "Chine,3-13-7,"));
        Shell check = Shell.run("check", folder.resolve("job.xml"));
        assertEquals(3, check.code());
        List<String> lines = check.err().lines().toList();
        assertEquals(2, lines.size(), check.err());
        assertTrue(lines.get(0).contains("job.xml:") && lines.get(0).contains("draught"), check.err());
        assertTrue(lines.get(1).contains("offsets.csv:8, station 0, Chine: column 2: ") && lines.get(1).contains("has 13 inches"), check.err());
    }

    @Test
    void tellsWhatIsStillTheDemos() throws IOException {
        Shell.run("new", folder.resolve("tern"), "--like", "outboard-39");
        Path job = folder.resolve("tern/job.xml");
        Files.writeString(job, Files.readString(job).replace("<draught unit=\"m\">0.58<", "<draught unit=\"m\">0.61<"));
        Shell check = Shell.run("check", job);
        assertEquals(3, check.code());
        assertTrue(check.outLines().stream().anyMatch(line -> line.matches("line [0-9]+: transducer / length is still 300 mm, as of outboard-39")), check.out());
        assertFalse(check.out().contains("draught is still"), check.out());
        assertTrue(check.err().contains("the job says like=\"outboard-39\""), check.err());
        assertTrue(check.err().contains("offsets.csv:"), "the blank table's faults too: " + check.err());
    }

    @Test
    void tellsWhatIsOddAndWhatIsMissing() throws IOException {
        String job = demo("outboard-39", "job.xml").replace("<full unit=\"kg\">7900<", "<full unit=\"kg\">3000<")
            .replace("<light unit=\"kg\">6700<", "<light unit=\"kg\">2500<");
        Files.writeString(folder.resolve("job.xml"), job.replaceFirst("(?s)<features>.*</features>", ""));
        Files.writeString(folder.resolve("offsets.csv"), demo("outboard-39", "offsets.csv"));
        Shell check = Shell.run("check", folder.resolve("job.xml"));
        assertEquals(0, check.code(), check.err());
        assertTrue(check.out().matches("(?s)Odd:\n  floating level at 0\\.580 m she displaces [0-9]{4} kg of salt water, but is told to weigh 2500 to 3000 kg: "
            + "draught, weights or table is another's\nNot told:\n  line 7, in <job>: <features> is not told: what is on the bottom\n.*"), check.out());
        assertTrue(check.out().contains("\nNot known where the transducer would go:\n"), check.out());
    }

    /** The table of a job that points out of its folder is not read. */
    @Test
    void readsNoTableOutsideTheFolder() throws IOException {
        Files.writeString(folder.resolve("secret.csv"), "secret words");
        Path job = Files.createDirectories(folder.resolve("in")).resolve("job.xml");
        Files.writeString(job, "<job><table file=\"../secret.csv\"/></job>");
        Shell check = Shell.run("check", job);
        assertEquals(3, check.code());
        assertFalse(check.err().contains("secret words") || check.err().contains("secret.csv:"), check.err());
    }

    private static String demo(String boat, String name) throws IOException {
        return Files.readString(DEMO.resolve(boat).resolve(name));
    }
}
