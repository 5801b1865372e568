package org.garboard.tablefile;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/**
 * The cells of a file. The mark between them is the one that stands behind the word Station where a line
 * begins with it, so it is read and not guessed.
 */
final class Grid {
    /** Blanks are taken possessively: a line of nothing else would be tried in every way to part them. */
    private static final Pattern STATION_LINE =
        Pattern.compile("(?m)^ *+(\"?) *+" + Labels.STATION + " *+\\1 *+([,;\t])");

    /** Far above what the largest table needs; our choice, so that a stray file is refused before it fills the memory. */
    private static final int MOST_CELLS = 2000;
    private static final int MOST_LINES = 4000;
    private static final int MOST_CELLS_IN_ALL = 500_000;
    private static final int MOST_CHARACTERS = 1000;
    private static final String LARGEST_TABLE =
        "; a table has " + Layout.MOST_STATIONS + " stations and " + Layout.MOST_LINES + " lines at most";

    private Grid() {
    }

    /** The lines of the file that are not empty. */
    static Optional<List<GridRow>> rows(String text, Problems problems) {
        Matcher station = STATION_LINE.matcher(text.replace('\r', '\n'));
        if (!station.find()) {
            problems.inFile(text.startsWith("<") ? "this is XML, and a table of offsets is rows of cells; a job names its table in <table file=\"…\"/>"
                : "no line begins with \"Station\" and then , or ; or a tab;"
                    + " write the stations in such a line, or head a column with it");
            return Optional.empty();
        }
        char mark = station.group(2).charAt(0);
        return isOfBearableSize(text, mark, problems) ? split(text, mark, problems) : Optional.empty();
    }

    private static boolean isOfBearableSize(String text, char mark, Problems problems) {
        int row = 1;
        int cells = 1;
        int cellsInAll = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == mark) {
                cells++;
                cellsInAll++;
                if (cells > MOST_CELLS) {
                    problems.inRow(row, "", "this line has more than " + MOST_CELLS + " cells" + LARGEST_TABLE);
                    return false;
                }
            }
            if (c == '\n' || c == '\r') {
                cells = 1;
                row += c == '\n' || i + 1 == text.length() || text.charAt(i + 1) != '\n' ? 1 : 0;
            }
        }
        if (row > MOST_LINES) {
            problems.inFile("the file has more than " + MOST_LINES + " lines" + LARGEST_TABLE);
        } else if (cellsInAll > MOST_CELLS_IN_ALL) {
            problems.inFile("the file has more than " + MOST_CELLS_IN_ALL + " cells, empty ones included" + LARGEST_TABLE);
        }
        return problems.isEmpty();
    }

    private static Optional<List<GridRow>> split(String text, char mark, Problems problems) {
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(mark).setIgnoreEmptyLines(false).get();
        List<GridRow> rows = new ArrayList<>();
        int row = 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord record : parser) {
                if (hasOverlongCell(record, row, problems)) {
                    return Optional.empty();
                }
                GridRow cells = row(record, row);
                if (!cells.isEmpty()) {
                    rows.add(cells);
                }
                row = (int) parser.getCurrentLineNumber() + 1;
            }
        } catch (UncheckedIOException | IOException broken) {
            problems.inRow(row, "", "a quoted cell begins here or below and is not closed, or text stands behind its"
                + " closing quote; quote a cell as \"…\", a quote within it as \"\"");
            return Optional.empty();
        }
        return Optional.of(rows);
    }

    private static boolean hasOverlongCell(CSVRecord record, int row, Problems problems) {
        for (int i = 0; i < record.size(); i++) {
            if (record.get(i).length() > MOST_CHARACTERS) {
                problems.inCell(new Cell(row, i + 1, record.get(i)), "", "",
                    "has " + record.get(i).length() + " characters; a cell has " + MOST_CHARACTERS + " at most");
                return true;
            }
        }
        return false;
    }

    private static GridRow row(CSVRecord record, int number) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < record.size(); i++) {
            cells.add(new Cell(number, i + 1, record.get(i).replace('\u00a0', ' ').strip()));
        }
        return new GridRow(number, cells);
    }
}
