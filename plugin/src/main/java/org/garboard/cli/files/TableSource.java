package org.garboard.cli.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.exchange.FileHash;
import org.garboard.hull.Fit;
import org.garboard.hull.Hull;
import org.garboard.hull.HullNotDrawn;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.OffsetTable;
import org.garboard.tablefile.SlipReport;
import org.garboard.tablefile.TableFile;
import org.garboard.tablefile.TableProblem;
import org.garboard.tablefile.TableReading;
import org.garboard.tablefile.WrittenTable;

/**
 * A table of offsets or a take-off that was read, and the hash of its file.
 *
 * @param table what the hull is drawn from, free of faults
 * @param printed the table as printed, with its cells in the file; none of a take-off
 * @param notes heading rows that the program does not use
 * @param file its name and its hash
 * @param copy of the file, to lie beside what is drawn from it
 */
public record TableSource(HullOffsets table, Optional<Printed> printed, List<String> notes, FileHash file, OutputFile copy) {
    private static final int MOST_CELLS = 500;

    public TableSource {
        notes = List.copyOf(notes);
    }

    /** A table of offsets by its rows and cells. */
    public record Printed(OffsetTable table, WrittenTable written) {
    }

    /**
     * Reads a table.
     *
     * @param path where it lies; messages name it so
     * @param name what the hash calls it
     */
    public static TableSource read(Path path, String name) throws InputFault {
        byte[] bytes = InputFile.read(path, TableFile.MOST_BYTES);
        TableReading reading = TableFile.read(path.toString(), bytes);
        if (reading instanceof TableReading.Faulty faulty) {
            throw new InputFault(messages(faulty));
        }
        FileHash hash = FileHash.of(name, bytes);
        OutputFile copy = new OutputFile("input-" + path.getFileName(), bytes);
        if (reading instanceof TableReading.TakenOff taken) {
            return new TableSource(taken.offsets(), Optional.empty(), taken.notes(), hash, copy);
        }
        TableReading.Read read = (TableReading.Read) reading;
        return new TableSource(read.table(), Optional.of(new Printed(read.table(), read.written())), read.notes(), hash, copy);
    }

    /** Likely slips; of a take-off none are looked for. */
    public SlipReport slips() {
        return printed.map(table -> table.written().slips())
            .orElseGet(() -> new SlipReport(List.of(), Optional.of("a take-off has no rows whose cells foretell each other")));
    }

    /** A slip may be behind the problems: then it is told as well, if it can be found in about a second. */
    private static List<String> messages(TableReading.Faulty faulty) {
        List<String> messages = new ArrayList<>(faulty.problems().stream().map(TableProblem::message).toList());
        faulty.written().filter(written -> written.cells() <= MOST_CELLS).ifPresent(written -> written.slips().slips().forEach(slip -> messages.add(slip.message())));
        return messages;
    }

    /** The hull drawn from the table, to the outside of its skin. */
    public Hull hull(Fit fit) throws InputFault {
        Optional<String> obstacle = fit.obstacle(table);
        if (obstacle.isPresent()) {
            throw new InputFault(file.name() + ": " + obstacle.get());
        }
        try {
            return fit.draw(table);
        } catch (HullNotDrawn no) {
            throw new InputFault(file.name() + ": " + no.getMessage());
        }
    }
}
