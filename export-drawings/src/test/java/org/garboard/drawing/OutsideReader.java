package org.garboard.drawing;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * Programs of others that read what we write. A test that needs one is skipped, and says so,
 * where it is not installed; with the environment variable {@code GARBOARD_READERS=required} it
 * fails instead.
 */
public enum OutsideReader {
    EZDXF("python3-ezdxf", List.of("/usr/bin/python3"), List.of("-c", "import ezdxf")),
    XMLLINT("libxml2-utils", List.of("xmllint"), List.of("--version")),
    ADMESH("admesh", List.of("admesh"), List.of("--version")),
    POPPLER("poppler-utils", List.of("pdftoppm"), List.of("-v")),
    RSVG("librsvg2-bin", List.of("rsvg-convert"), List.of("--version"));

    private static final long SECONDS = 60;

    private final String debianPackage;
    private final List<String> program;
    private final List<String> probe;

    OutsideReader(String debianPackage, List<String> program, List<String> probe) {
        this.debianPackage = debianPackage;
        this.program = program;
        this.probe = probe;
    }

    /** What a program said and how it ended. */
    public record Answer(int exit, String output) {
    }

    /** Skips or fails the calling test where the program is missing. */
    public void require() {
        if (works()) {
            return;
        }
        String message = program.get(0) + " does not run here (Debian package " + debianPackage + ")";
        if ("required".equals(System.getenv("GARBOARD_READERS"))) {
            Assertions.fail(message + ", and GARBOARD_READERS=required");
        }
        Assumptions.abort(message + ": not checked");
    }

    private boolean works() {
        try {
            return run(probe).exit() == 0;
        } catch (IOException notInstalled) {
            return false;
        }
    }

    /** Runs the program, standard output and error together. */
    public Answer run(List<String> arguments) throws IOException {
        List<String> command = new ArrayList<>(program);
        command.addAll(arguments);
        Path output = Files.createTempFile("reader", ".txt");
        try {
            Process process = new ProcessBuilder(command).redirectErrorStream(true)
                    .redirectOutput(output.toFile()).start();
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
