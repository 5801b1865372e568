package org.garboard.cli;

import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.ParameterException;
import picocli.CommandLine.Spec;

/** The option {@code --threads}, which every command takes. */
final class Threads {
    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Option(names = "--threads", paramLabel = "N",
        description = "Work on so many processors at once; all by default. The answer does not depend on it.")
    void setCount(int count) {
        if (count < 1 || count > 1024) {
            throw new ParameterException(spec.commandLine(), "--threads is " + count + "; it must be from 1 to 1024");
        }
        Garboard.of(spec).workOn(count);
    }
}
