package org.garboard.tablefile;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;

/**
 * A file with the classical two-block table of offsets: heights above base and half-breadths from the
 * centreline, or with a take-off: as CSV in UTF-8, its cells parted by comma, semicolon or tab, or as .xlsx.
 *
 * <p>Heading rows give title, units, surface and the stations' places. Nothing is dropped or mended: what
 * is not understood is a problem, and all problems are told in one go.
 */
public final class TableFile {
    /** The largest file that is read [bytes]. */
    public static final int MOST_BYTES = 8 * 1024 * 1024;

    private TableFile() {
    }

    /** Reads a file; one that is missing or cannot be opened is a problem like any other. */
    public static TableReading read(Path file) {
        String name = file.toString();
        Problems problems = new Problems(name, GridKind.TEXT);
        try {
            if (Files.isDirectory(file)) {
                problems.inFile("this is a folder; a file with a table of offsets was expected");
            } else if (Files.size(file) > MOST_BYTES) {
                problems.inFile(TableText.tooLarge(Files.size(file)));
            } else {
                return read(name, Files.readAllBytes(file));
            }
        } catch (NoSuchFileException missing) {
            problems.inFile("there is no such file");
        } catch (IOException broken) {
            problems.inFile("the file cannot be read (" + broken.getClass().getSimpleName() + ")");
        }
        return new TableReading.Faulty(problems.inOrder(), Optional.empty());
    }

    /**
     * Reads a file's content, so that the caller can take its checksum of the very bytes that are read.
     *
     * @param fileName the name that problems are told under
     */
    public static TableReading read(String fileName, byte[] content) {
        GridKind grid = GridKind.of(content);
        Problems problems = new Problems(fileName, grid);
        Optional<List<GridRow>> rows = grid == GridKind.SPREADSHEET
            ? Spreadsheet.rows(content, problems)
            : TableText.of(content, problems).flatMap(text -> Grid.rows(text, problems));
        if (rows.isPresent()) {
            HullsNamed.requireOne(rows.get(), problems);
            return TakeOffReader.isTakeOff(rows.get()) ? takeOff(rows.get(), problems) : table(grid, fileName, rows.get(), problems);
        }
        return new TableReading.Faulty(problems.inOrder(), Optional.empty());
    }

    private static TableReading takeOff(List<GridRow> rows, Problems problems) {
        Optional<TableReading> reading = TakeOffReader.read(rows, problems);
        return reading.filter(read -> problems.isEmpty())
            .orElseGet(() -> new TableReading.Faulty(problems.inOrder(), Optional.empty()));
    }

    private static TableReading table(GridKind grid, String fileName, List<GridRow> rows, Problems problems) {
        Headings headings = new Headings(problems);
        Optional<TableAssembly> assembly = assembly(rows, headings, problems);
        return problems.isEmpty()
            ? new TableReading.Read(assembly.orElseThrow().table(), headings.notes(), assembly.orElseThrow().written(grid, fileName).orElseThrow())
            : new TableReading.Faulty(problems.inOrder(), assembly.flatMap(read -> read.written(grid, fileName)));
    }

    private static Optional<TableAssembly> assembly(List<GridRow> rows, Headings headings, Problems problems) {
        return Layout.of(rows, headings, problems).map(layout -> {
            headings.requireAll();
            return TableAssembly.of(layout, headings, problems);
        });
    }
}
