package org.garboard.cli;

import org.garboard.cli.files.InTheWay;
import picocli.CommandLine.Option;

/** The option {@code --replace} of commands that write a set. */
final class Replace {
    @Option(names = "--replace", description = "Replace files of the same names in DIR, whoever wrote them; "
        + "without it a file that no earlier run wrote, or that was changed since, is never touched, and nothing is written.")
    private boolean asked;

    InTheWay inTheWay() {
        return asked ? InTheWay.GOES : InTheWay.STAYS;
    }
}
