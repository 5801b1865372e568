package org.garboard.reader;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * Programs of others that read what we write, write what we read, or start us. A test that needs one is skipped, and says so,
 * where it is not installed; with the environment variable {@code GARBOARD_READERS=required} it fails instead.
 */
public enum OutsideReader {
    EZDXF("Debian package python3-ezdxf", List.of("/usr/bin/python3"), "-c", "import ezdxf"),
    OPENPYXL("Debian package python3-openpyxl", List.of("/usr/bin/python3"), "-c", "import openpyxl"),
    XMLLINT("Debian package libxml2-utils", List.of("xmllint"), "--version"),
    ADMESH("Debian package admesh", List.of("admesh"), "--version"),
    POPPLER("Debian package poppler-utils", List.of("pdftoppm"), "-v"),
    POPPLER_WORDS("Debian package poppler-utils", List.of("pdftotext"), "-v"),
    RSVG("Debian package librsvg2-bin", List.of("rsvg-convert"), "--version"),
    CAD("Debian package freecad-python3", List.of("freecadcmd")),
    CAD_WINDOW("Debian package freecad", List.of("freecad")),
    /** Draws a DXF; it ends with 0 whatever it did. */
    LIBRECAD("Debian package librecad", List.of("librecad")),
    /** Its modules, as a mill's program reads a cut file. */
    MILL("Debian package dxf2gcode", List.of("/usr/bin/python3"), "-c", "import dxf2gcode.dxfimport.importer"),
    SCREEN("Debian package xvfb", List.of("xvfb-run")),
    PARALLEL("Debian package parallel", List.of("parallel"), "--version"),
    MAN("Debian package man-db", List.of("man"), "--version"),
    BROWSER("Debian package chromium", List.of("chromium"), "--version"),
    /** Checks HTML; GARBOARD_VNU names its jar. */
    VNU("vnu.jar of the npm package vnu-jar, named by the environment variable GARBOARD_VNU",
        List.of("java", "-jar", System.getenv().getOrDefault("GARBOARD_VNU", "vnu.jar")), "--version");

    private static final long SECONDS = 60;

    private final String origin;
    private final List<String> program;
    private final List<String> probe;

    /** @param probe what it is asked to see whether it works; nothing where to be found is enough */
    OutsideReader(String origin, List<String> program, String... probe) {
        this.origin = origin;
        this.program = program;
        this.probe = List.of(probe);
    }

    /** What a program said and how it ended. */
    public record Answer(int exit, String output) {
    }

    /** Skips or fails the calling test where the program is missing. */
    public void require() {
        if (works()) {
            return;
        }
        String message = String.join(" ", program) + " does not run here (" + origin + ")";
        if ("required".equals(System.getenv("GARBOARD_READERS"))) {
            Assertions.fail(message + ", and GARBOARD_READERS=required");
        }
        Assumptions.abort(message + ": not checked");
    }

    private boolean works() {
        if (probe.isEmpty()) {
            return List.of(System.getenv("PATH").split(":")).stream().anyMatch(place -> Files.isExecutable(Path.of(place, program.get(0))));
        }
        try {
            return run(probe).exit() == 0;
        } catch (IOException notInstalled) {
            return false;
        }
    }

    /** Runs the program, standard output and error together. */
    public Answer run(List<String> arguments) throws IOException {
        return run(arguments, Map.of());
    }

    /** The same with some variables of its environment set. */
    public Answer run(List<String> arguments, Map<String, String> variables) throws IOException {
        List<String> command = new ArrayList<>(program);
        command.addAll(arguments);
        Path output = Files.createTempFile("reader", ".txt");
        try {
            ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(output.toFile())
                    .redirectInput(ProcessBuilder.Redirect.from(Path.of("/dev/null").toFile()));
            builder.environment().putAll(variables);
            Process process = builder.start();
            if (!process.waitFor(SECONDS, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new IOException(command + " did not end in " + SECONDS + " s");
            }
            return new Answer(process.exitValue(), Files.readString(output, StandardCharsets.UTF_8));
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IOException(command + " was interrupted", e);
        } finally {
            Files.delete(output);
        }
    }
}
