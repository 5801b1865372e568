package org.garboard.cli;

import java.nio.file.Path;
import org.garboard.cli.files.InTheWay;
import org.garboard.cli.files.SingleFile;
import picocli.CommandLine.Option;

/** The option {@code --replace} of commands that write files. */
final class Replace {
    static final String NAME = "--replace";

    @Option(names = NAME, description = "Replace files of the same names, whoever wrote them; without it a file that this program "
        + "did not write, or of a set one that was changed since, is never touched, and nothing is written.")
    private boolean asked;

    InTheWay inTheWay() {
        return asked ? InTheWay.GOES : InTheWay.STAYS;
    }

    /** One file, written as was asked. */
    SingleFile file(Path file, String mark) {
        return new SingleFile(file, mark, inTheWay());
    }
}
