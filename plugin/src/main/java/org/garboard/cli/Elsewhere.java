package org.garboard.cli;

import org.garboard.exchange.TablePlace;
import picocli.CommandLine.Option;

/** The option {@code --allow-elsewhere} of commands that read a job. */
final class Elsewhere {
    static final String NAME = "--allow-elsewhere";

    @Option(names = NAME, description = "Read the table wherever the job says: by an absolute path, through .. or a link; "
        + "without it only in the folder of the job or below it.")
    private boolean allowed;

    TablePlace tables() {
        return allowed ? TablePlace.ANYWHERE : TablePlace.BELOW_JOB;
    }
}
