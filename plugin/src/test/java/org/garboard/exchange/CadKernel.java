package org.garboard.exchange;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.garboard.reader.OutsideReader;
import org.junit.jupiter.api.Assertions;

/**
 * FreeCAD without a screen, as a reader of surface files that is not ours.
 *
 * <p>Its exit status and its standard output prove nothing: what counts is the file of answers.
 */
final class CadKernel {
    private static final String PROGRAM = "freecadcmd";
    private static final long SECONDS = 120;

    private final Path folder;

    /** @param folder where all its files go, settings of its own too */
    private CadKernel(Path folder) {
        this.folder = folder;
    }

    static CadKernel in(Path folder) {
        OutsideReader.CAD.require();
        return new CadKernel(folder);
    }

    /** What {@code read_surface.py} answers, line by line, "done" left out. */
    List<String> answers(byte[] surface, String places) throws IOException, InterruptedException {
        return answers("read_surface.py", "surface.xml", surface, places);
    }

    /** What {@code section_mesh.py} answers of an STL and planes, line by line, "done" left out. */
    List<String> sections(byte[] stl, String planes) throws IOException, InterruptedException {
        return answers("section_mesh.py", "part.stl", stl, planes);
    }

    private List<String> answers(String name, String file, byte[] surface, String places) throws IOException, InterruptedException {
        Path script = folder.resolve(name);
        try (var in = CadKernel.class.getResourceAsStream("/exchange/" + name)) {
            Files.write(script, in.readAllBytes());
        }
        Path answers = folder.resolve("answers.txt");
        Files.deleteIfExists(answers);
        run(script, Map.of(
            "FREECAD_USER_HOME", Files.createDirectories(folder.resolve("home")).toString(),
            "GARBOARD_SURFACE", Files.write(folder.resolve(file), surface).toString(),
            "GARBOARD_PLACES", Files.writeString(folder.resolve("places.txt"), places, StandardCharsets.US_ASCII).toString(),
            "GARBOARD_ANSWERS", answers.toString()));
        List<String> lines = Files.readAllLines(answers, StandardCharsets.US_ASCII);
        Assertions.assertEquals("done", lines.get(lines.size() - 1));
        return lines.subList(0, lines.size() - 1);
    }

    private void run(Path script, Map<String, String> variables) throws IOException, InterruptedException {
        Path said = folder.resolve("said.txt");
        ProcessBuilder builder = new ProcessBuilder(PROGRAM, script.toString())
            .redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()))
            .redirectErrorStream(true).redirectOutput(said.toFile());
        builder.environment().putAll(variables);
        Process process = builder.start();
        if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
            process.destroyForcibly();
            throw new AssertionError(PROGRAM + " did not end in " + SECONDS + " s");
        }
        Path fault = Path.of(variables.get("GARBOARD_ANSWERS") + ".fault");
        if (process.exitValue() != 0 || Files.exists(fault) || !Files.exists(Path.of(variables.get("GARBOARD_ANSWERS")))) {
            throw new AssertionError(PROGRAM + " ended with " + process.exitValue() + ": "
                + (Files.exists(fault) ? Files.readString(fault) : Files.readString(said)));
        }
    }
}
