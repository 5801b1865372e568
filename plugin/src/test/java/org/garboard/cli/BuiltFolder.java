package org.garboard.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.TimeUnit;

/** The runnable folder as the build leaves it, started as a user starts it: in a process of its own. */
final class BuiltFolder {
    static final Path HOME = Path.of(System.getProperty("garboard.folder", "target/garboard")).toAbsolutePath();
    static final Path LAUNCHER = HOME.resolve("bin/garboard");

    private BuiltFolder() {
    }

    static Path demo(String boat) {
        return HOME.resolve("demo").resolve(boat);
    }

    /** Runs a command in a folder with some variables set; an empty value takes the variable away. */
    static Shell run(Path folder, Map<String, String> variables, Object... command) throws IOException, InterruptedException {
        List<String> words = new ArrayList<>();
        for (Object word : command) {
            words.add(word.toString());
        }
        Path out = Files.createTempFile("garboard", ".out");
        Path err = Files.createTempFile("garboard", ".err");
        try {
            ProcessBuilder builder = new ProcessBuilder(words)
                .directory(folder.toFile()).redirectOutput(out.toFile()).redirectError(err.toFile());
            builder.environment().remove("JAVA_TOOL_OPTIONS");
            variables.forEach((name, value) -> {
                if (value.isEmpty()) {
                    builder.environment().remove(name);
                } else {
                    builder.environment().put(name, value);
                }
            });
            Process process = builder.start();
            if (!process.waitFor(120, TimeUnit.SECONDS)) {
                process.destroyForcibly();
                throw new IllegalStateException(words + " did not end");
            }
            return new Shell(process.exitValue(), Files.readString(out, StandardCharsets.UTF_8),
                Files.readString(err, StandardCharsets.UTF_8));
        } finally {
            Files.delete(out);
            Files.delete(err);
        }
    }
}
