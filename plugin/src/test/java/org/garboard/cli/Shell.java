package org.garboard.cli;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;

/**
 * One command line carried out within the test.
 *
 * @param code exit code
 * @param out standard output
 * @param err standard error
 */
record Shell(int code, String out, String err) {

    static Shell run(Object... arguments) {
        StringWriter out = new StringWriter();
        StringWriter err = new StringWriter();
        String[] words = Arrays.stream(arguments).map(Object::toString).toArray(String[]::new);
        int code = Garboard.run(new PrintWriter(out), new PrintWriter(err), words);
        return new Shell(code, out.toString(), err.toString());
    }

    List<String> outLines() {
        return out.lines().toList();
    }

    /** Copies a file of the test resources into a folder. */
    static Path copy(String resource, Path folder) {
        Path target = folder.resolve(Path.of(resource).getFileName().toString());
        try (InputStream in = Shell.class.getResourceAsStream(resource)) {
            Files.copy(in, target);
            return target;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
