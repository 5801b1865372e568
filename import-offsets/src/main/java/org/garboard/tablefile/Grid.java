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
    private static final Pattern STATION_LINE =
        Pattern.compile("(?m)^ *(\"?) *" + Labels.STATION + " *\\1 *([,;\t])");

    /** Far above what the largest table needs; our choice, so that a stray file is refused before it fills the memory. */
    private static final int MOST_CELLS = 2000;
    private static final int MOST_LINES = 4000;

    private Grid() {
    }

    /** The lines of the file that are not empty. */
    static Optional<List<GridRow>> rows(String text, Problems problems) {
        Matcher station = STATION_LINE.matcher(text.replace('\r', '\n'));
        if (!station.find()) {
            problems.inFile("no line begins with \"Station\" and then , or ; or a tab;"
                + " write the stations in such a line, or head a column with it");
            return Optional.empty();
        }
        char mark = station.group(2).charAt(0);
        return isOfBearableSize(text, mark, problems) ? split(text, mark, problems) : Optional.empty();
    }

    private static boolean isOfBearableSize(String text, char mark, Problems problems) {
        int row = 1;
        int cells = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c == mark && ++cells > MOST_CELLS) {
                problems.inRow(row, "", "this line has more than " + MOST_CELLS + " cells");
                return false;
            }
            if (c == '\n' || c == '\r') {
                cells = 1;
                row += c == '\n' || i + 1 == text.length() || text.charAt(i + 1) != '\n' ? 1 : 0;
            }
        }
        if (row > MOST_LINES) {
            problems.inFile("the file has more than " + MOST_LINES + " lines");
        }
        return row <= MOST_LINES;
    }

    private static Optional<List<GridRow>> split(String text, char mark, Problems problems) {
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(mark).setIgnoreEmptyLines(false).get();
        List<GridRow> rows = new ArrayList<>();
        int row = 1;
        try (CSVParser parser = CSVParser.parse(new StringReader(text), format)) {
            for (CSVRecord record : parser) {
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

    private static GridRow row(CSVRecord record, int number) {
        List<Cell> cells = new ArrayList<>();
        for (int i = 0; i < record.size(); i++) {
            cells.add(new Cell(number, i + 1, record.get(i).replace('\u00a0', ' ').strip()));
        }
        return new GridRow(number, cells);
    }
}
