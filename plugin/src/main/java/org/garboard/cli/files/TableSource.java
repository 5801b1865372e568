package org.garboard.cli.files;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.exchange.FileHash;
import org.garboard.hull.Fit;
import org.garboard.hull.Hull;
import org.garboard.hull.HullNotDrawn;
import org.garboard.offsets.OffsetTable;
import org.garboard.tablefile.TableFile;
import org.garboard.tablefile.TableProblem;
import org.garboard.tablefile.TableReading;
import org.garboard.tablefile.WrittenTable;

/**
 * A table of offsets that was read, and the hash of its file.
 *
 * @param table the table, free of faults
 * @param notes heading rows that the program does not use
 * @param written the table with its cells in the file
 * @param file its name and its hash
 */
public record TableSource(OffsetTable table, List<String> notes, WrittenTable written, FileHash file) {
    private static final int MOST_CELLS = 500;

    public TableSource {
        notes = List.copyOf(notes);
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
        TableReading.Read read = (TableReading.Read) reading;
        return new TableSource(read.table(), read.notes(), read.written(), FileHash.of(name, bytes));
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
