package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What README.md shows is what happens. */
class ReadmeIT {
    private static final Path README = Path.of("..", "README.md");

    @TempDir
    private Path folder;

    @Test
    void everyExampleRuns() throws Exception {
        for (String name : List.of("job.xml", "offsets.csv", "findings.csv")) {
            Files.copy(BuiltFolder.demo("outboard-22").resolve(name), folder.resolve(name));
        }
        String path = BuiltFolder.LAUNCHER.getParent() + ":" + System.getenv("PATH");
        List<String> examples = blocks("sh").stream().flatMap(String::lines).filter(line -> line.startsWith("garboard ")).toList();
        assertFalse(examples.isEmpty());
        for (String example : examples) {
            Shell shell = BuiltFolder.run(folder, Map.of("PATH", path), "sh", "-c", example);
            assertEquals(0, shell.code(), example + "\n" + shell.err());
            assertEquals("", shell.err(), example);
        }
        assertTrue(Files.exists(folder.resolve("drawings/record.xml")));
    }

    @Test
    void itsTablesCanBeRead() throws Exception {
        Path table = folder.resolve("offsets.csv");
        assertFalse(blocks("csv").isEmpty());
        for (String example : blocks("csv")) {
            Files.writeString(table, example, StandardCharsets.UTF_8);
            Shell shell = BuiltFolder.run(folder, Map.of(), BuiltFolder.LAUNCHER, "table", table);
            assertEquals(0, shell.code(), shell.err());
            assertTrue(shell.out().startsWith("Workboat 5\n"), shell.out());
        }
    }

    /** The continuous build takes these two lines from there. */
    @Test
    void itsFirstBlockIsTheTwoCommands() throws IOException {
        List<String> lines = blocks("sh").get(0).lines().toList();
        assertEquals(2, lines.size());
        assertTrue(lines.get(0).contains("garboard run") && lines.get(0).contains("--out plugin/target/outboard-22"));
        assertEquals("mvn -B verify", lines.get(1));
    }

    /** Table of files, as the program writes them. */
    @Test
    void namesEveryFileOfARun() throws Exception {
        Path job = BuiltFolder.demo("outboard-39").resolve("job.xml");
        Shell shell = BuiltFolder.run(folder, Map.of(), BuiltFolder.LAUNCHER, "run", job, "--out", folder.resolve("out"));
        assertEquals(0, shell.code(), shell.err());
        String readme = Files.readString(README, StandardCharsets.UTF_8);
        try (var files = Files.list(folder.resolve("out"))) {
            for (Path file : files.toList()) {
                String name = file.getFileName().toString().replaceFirst("^(sheet-.*)\\.svg$", "$1.dxf");
                assertTrue(readme.contains("`" + name + "`"), name + " is not in README.md");
            }
        }
    }

    private static List<String> blocks(String language) throws IOException {
        String readme = Files.readString(README, StandardCharsets.UTF_8);
        return Pattern.compile("(?ms)^```" + language + "\\n(.*?)^```$").matcher(readme).results()
            .map((MatchResult block) -> block.group(1)).toList();
    }
}
