package org.garboard.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The same input gives the same bytes, whatever the machine is set to. */
class SameBytesIT {
    private static final String TURKISH = "-Duser.language=tr -Duser.country=TR -Duser.timezone=Pacific/Kiritimati "
        + "-Dfile.encoding=ISO-8859-9 -XX:ActiveProcessorCount=1";
    private static final String ARABIC = "-Duser.language=ar -Duser.country=EG -Duser.timezone=America/St_Johns "
        + "-Dfile.encoding=UTF-8 -XX:ActiveProcessorCount=2";

    @TempDir
    private Path folder;

    @ParameterizedTest
    @ValueSource(strings = {"outboard-22", "outboard-39", "inboard-58", "displacement-30"})
    void law_noSettingOfTheMachineChangesAByte(String boat) throws Exception {
        Path turkish = run("turkish", boat, TURKISH);
        Path arabic = run("elsewhere/arabic", boat, ARABIC);
        List<String> names = names(turkish);
        assertEquals(names, names(arabic));
        assertTrue(names.contains("record.xml") && names.contains("sheet-1-siting.dxf"), names.toString());
        for (String name : names) {
            assertArrayEquals(Files.readAllBytes(turkish.resolve(name)), Files.readAllBytes(arabic.resolve(name)), name);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"--csv", "--threads=2"})
    void law_noSettingOfTheMachineChangesWhatIsPrinted(String option) throws Exception {
        Path job = BuiltFolder.demo("outboard-22").resolve("job.xml");
        Shell turkish = BuiltFolder.run(folder, Map.of("JAVA_TOOL_OPTIONS", TURKISH), BuiltFolder.LAUNCHER, "site", job, option);
        Shell arabic = BuiltFolder.run(folder, Map.of("JAVA_TOOL_OPTIONS", ARABIC), BuiltFolder.LAUNCHER, "site", job, option);
        assertEquals(0, turkish.code(), turkish.err());
        assertEquals(turkish.out(), arabic.out());
    }

    /** Runs a copy of the demo in a folder of its own under a runtime with these options. */
    private Path run(String place, String boat, String options) throws IOException, InterruptedException {
        Path home = Files.createDirectories(folder.resolve(place));
        for (String name : List.of("job.xml", "offsets.csv")) {
            Files.copy(BuiltFolder.demo(boat).resolve(name), home.resolve(name));
        }
        Shell shell = BuiltFolder.run(home, Map.of("JAVA_TOOL_OPTIONS", options, "LC_ALL", "C"),
            BuiltFolder.LAUNCHER, "run", "job.xml", "--out", "drawings");
        assertEquals(0, shell.code(), shell.err());
        return home.resolve("drawings");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }
}
