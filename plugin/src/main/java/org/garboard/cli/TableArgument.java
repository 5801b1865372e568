package org.garboard.cli;

import java.nio.file.Path;
import org.garboard.cli.files.InputFault;
import org.garboard.cli.files.TableSource;
import org.garboard.hull.Fit;
import org.garboard.hull.Hull;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import picocli.CommandLine.Spec;

/** The table of offsets that a command takes as its argument, and how the hull is drawn through it. */
final class TableArgument {
    static final String TABLE = "The table of offsets or the take-off, a CSV or .xlsx file.";
    static final String DRAWN_EXACT =
        "Draw the hull through every value of the table. Without it: the fairest surface within half the table's least count of every value.";

    @Spec(Spec.Target.MIXEE)
    private CommandSpec spec;

    @Parameters(index = "0", paramLabel = "TABLE", description = TABLE)
    private Path file;

    @Option(names = "--exact", description = DRAWN_EXACT)
    private boolean exact;

    /** Of a command that can do without a table, and was given one. */
    static TableArgument of(Path file, Fit fit) {
        TableArgument argument = new TableArgument();
        argument.file = file;
        argument.exact = fit == Fit.EXACT;
        return argument;
    }

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
        return Garboard.of(spec).hull(source, fit());
    }

    /** As the user wrote it. */
    String name() {
        return file.toString();
    }
}
