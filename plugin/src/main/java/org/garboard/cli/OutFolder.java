package org.garboard.cli;

import java.nio.file.Path;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The option {@code --out} of commands that fill a folder. */
final class OutFolder {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    private Path path;

    @Option(names = "--out", paramLabel = "DIR", required = true, description = "The folder to write to; made if need be.")
    void setPath(Path path) {
        if (path.toString().isEmpty()) {
            throw new ParameterException(spec.commandLine(), "--out is empty; name a folder, or . for this one");
        }
        this.path = path;
    }

    Path path() {
        return path;
    }
}
