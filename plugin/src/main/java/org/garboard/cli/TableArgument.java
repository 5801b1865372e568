package org.garboard.cli;

import java.nio.file.Path;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.TableSource;
import org.garboard.hull.Fit;
import org.garboard.hull.Hull;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** The table of offsets that a command takes as its argument, and how the hull is drawn through it. */
final class TableArgument {
    @Parameters(index = "0", paramLabel = "TABLE", description = "The table of offsets, a CSV file.")
    private Path file;

    @Option(names = "--exact",
        description = "Draw the hull through every value of the table. Without it: the fairest surface within half the table's least count of every value.")
    private boolean exact;

    /** The hash has the file's name without folders, so that what is written does not depend on them. */
    TableSource read() throws InputFault {
        Path last = file.getFileName();
        return TableSource.read(file, last == null ? name() : last.toString());
    }

    Fit fit() {
        return exact ? Fit.EXACT : Fit.WITHIN_ROUNDING;
    }

    Hull hull() throws InputFault {
        return hull(read());
    }

    Hull hull(TableSource source) throws InputFault {
        return source.hull(fit());
    }

    /** As the user wrote it. */
    String name() {
        return file.toString();
    }
}
