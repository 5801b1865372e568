package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import org.garboard.reader.OutsideReader;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The workbench's zip as the build leaves it, unpacked into FreeCAD's folder for add-ons as a user does, in a folder whose name has a
 * blank and an umlaut.
 */
class CadHostIT {
    private static final Path SCREENS = BuiltFolder.HOME.resolveSibling("screens");
    private static final Path SCRIPTS = Path.of("src/test/freecad").toAbsolutePath();

    @TempDir
    private Path folder;
    private Path home;

    @BeforeEach
    void unpack() throws IOException {
        home = Files.createDirectories(folder.resolve("Böote am Kai"));
        try (ZipInputStream zip = new ZipInputStream(Files.newInputStream(zip()))) {
            for (ZipEntry entry = zip.getNextEntry(); entry != null; entry = zip.getNextEntry()) {
                Path target = home.resolve("Mod").resolve(entry.getName()).normalize();
                assertTrue(target.startsWith(home), entry.getName());
                if (entry.isDirectory()) {
                    Files.createDirectories(target);
                } else {
                    Files.createDirectories(target.getParent());
                    Files.copy(zip, target);
                }
            }
        }
    }

    private static Path zip() throws IOException {
        try (Stream<Path> files = Files.list(BuiltFolder.HOME.getParent())) {
            return files.filter(file -> file.getFileName().toString().matches("garboard-freecad-.*\\.zip")).findFirst()
                .orElseThrow(() -> new AssertionError("the build left no garboard-freecad-<version>.zip"));
        }
    }

    @Test
    void theZipHoldsTheSameProgram() throws IOException {
        assertEquals(names(BuiltFolder.HOME.resolve("lib")), names(home.resolve("Mod/Garboard/lib")));
        String about = Files.readString(home.resolve("Mod/Garboard/package.xml"));
        String version = zip().getFileName().toString().replaceAll("garboard-freecad-(.*)\\.zip", "$1");
        assertTrue(about.contains("<version>" + version + "</version>"), about);
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    /** By FreeCAD's own test framework, whose exit status is the answer. */
    @Test
    void worksWithoutAWindow() throws Exception {
        OutsideReader.CAD.require();
        Path said = folder.resolve("said.txt");
        int status = run(said, List.of("freecadcmd", "-t", "TestGarboardApp", "-M", SCRIPTS.toString()), Map.of(), 600);
        String words = Files.readString(said, StandardCharsets.UTF_8);
        assertTrue(words.contains("\nRan "), words);
        assertEquals(0, status, words.substring(Math.max(0, words.length() - 6000)));
    }

    /** One pass from a table to the sheets under a screen of its own; pictures of every panel stay in {@code target/screens}. */
    @Test
    void worksInAWindow() throws Exception {
        OutsideReader.CAD_WINDOW.require();
        OutsideReader.SCREEN.require();
        Files.createDirectories(SCREENS);
        Path result = SCREENS.resolve("result.txt");
        Files.deleteIfExists(result);
        Files.copy(SCRIPTS.resolve("profile.cfg"), home.resolve("user.cfg"));
        Path said = folder.resolve("said.txt");
        int status = run(said, List.of("xvfb-run", "-a", "-s", "-screen 0 1600x1000x24 +extension GLX", "freecad", SCRIPTS.resolve("drive_window.py").toString()),
            Map.of("QT_QPA_PLATFORM", "xcb", "LIBGL_ALWAYS_SOFTWARE", "1", "GARBOARD_SCREENS", SCREENS.toString()), 600);
        assertTrue(Files.exists(result), "no result; FreeCAD ended with " + status + ": " + Files.readString(said));
        List<String> lines = Files.readAllLines(result);
        assertEquals("passed", lines.get(lines.size() - 1), String.join("\n", lines));
        assertEquals(0, status);
        for (String picture : List.of("2-hull", "5-sites", "8-pocket", "10-sheets")) {
            assertTrue(Files.size(SCREENS.resolve(picture + ".png")) > 20_000, picture);
        }
    }

    private int run(Path said, List<String> words, Map<String, String> variables, long seconds) throws IOException, InterruptedException {
        ProcessBuilder builder = new ProcessBuilder(new ArrayList<>(words)).directory(folder.toFile())
            .redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile())).redirectErrorStream(true).redirectOutput(said.toFile());
        builder.environment().remove("GARBOARD_HOME");
        builder.environment().put("FREECAD_USER_HOME", home.toString());
        builder.environment().put("GARBOARD_DEMO", BuiltFolder.HOME.resolve("demo").toString());
        builder.environment().putAll(variables);
        Process process = builder.start();
        if (!process.waitFor(seconds, TimeUnit.SECONDS)) {
            process.descendants().forEach(ProcessHandle::destroyForcibly);
            process.destroyForcibly();
            fail(words + " did not end in " + seconds + " s: " + Files.readString(said));
        }
        return process.exitValue();
    }
}
