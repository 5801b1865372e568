package org.garboard.tablefile;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.ReadingOptions;
import org.dhatim.fastexcel.reader.Row;
import org.dhatim.fastexcel.reader.Sheet;

/**
 * The cells of an .xlsx file as text: of the sheet that is named for a table, or else of the first. Formulas
 * stand with the value that was last worked out.
 */
final class Spreadsheet {
    private static final Pattern NAMED = Pattern.compile("take-? ?off|(table of )?offsets", Pattern.CASE_INSENSITIVE);
    /** Years, days and hours; a format of numbers has none of these letters outside quotes and brackets. */
    private static final Pattern DATE = Pattern.compile("[dyhs]", Pattern.CASE_INSENSITIVE);
    /** Numbers are kept to 16 digits or so; what a sheet shows is the first 15. */
    private static final MathContext SHOWN = new MathContext(15);
    private static final int MOST_ROWS = 4000;
    private static final int MOST_COLUMNS = 2000;
    private static final int MOST_CELLS = 500_000;
    private static final int MOST_CHARACTERS = 1000;

    private final Problems problems;
    private int cells;

    private Spreadsheet(Problems problems) {
        this.problems = problems;
    }

    /** The rows that are not empty. */
    static Optional<List<GridRow>> rows(byte[] content, Problems problems) {
        return SpreadsheetParts.of(content, problems).flatMap(parts -> new Spreadsheet(problems).read(parts));
    }

    private Optional<List<GridRow>> read(byte[] parts) {
        try (ReadableWorkbook workbook = new ReadableWorkbook(new ByteArrayInputStream(parts), new ReadingOptions(hasFormats(parts), true))) {
            Optional<Sheet> sheet = sheet(workbook);
            return sheet.isEmpty() ? Optional.empty() : rows(sheet.get());
        } catch (IOException | RuntimeException broken) {
            problems.inFile("the spreadsheet cannot be read; save it again as .xlsx, or as CSV in UTF-8");
            return Optional.empty();
        }
    }

    /** A spreadsheet without formats has no dates either. */
    private static boolean hasFormats(byte[] parts) {
        return new String(parts, StandardCharsets.ISO_8859_1).contains("xl/styles.xml");
    }

    private Optional<Sheet> sheet(ReadableWorkbook workbook) {
        List<Sheet> sheets = workbook.getSheets().toList();
        List<Sheet> named = sheets.stream().filter(sheet -> NAMED.matcher(sheet.getName().strip()).matches()).toList();
        if (named.size() > 1) {
            problems.inFile("the sheets " + named.stream().map(sheet -> "\"" + sheet.getName() + "\"").collect(Collectors.joining(" and "))
                + " are both named for a table; leave one of them, or rename the others");
            return Optional.empty();
        }
        return named.isEmpty() ? sheets.stream().findFirst() : Optional.of(named.get(0));
    }

    private Optional<List<GridRow>> rows(Sheet sheet) throws IOException {
        List<GridRow> rows = new ArrayList<>();
        try (Stream<Row> stream = sheet.openStream()) {
            for (Iterator<Row> each = stream.iterator(); each.hasNext();) {
                Row row = each.next();
                GridRow read = row(row);
                if (!read.isEmpty()) {
                    rows.add(read);
                }
                if (rows.size() > MOST_ROWS || cells > MOST_CELLS) {
                    problems.inFile("sheet \"" + sheet.getName() + "\" has more than " + (rows.size() > MOST_ROWS ? MOST_ROWS + " rows" : MOST_CELLS + " cells")
                        + "; a table has " + Layout.MOST_STATIONS + " stations and " + Layout.MOST_LINES + " lines at most");
                    return Optional.empty();
                }
            }
        }
        if (rows.isEmpty() && problems.isEmpty()) {
            problems.inFile("sheet \"" + sheet.getName() + "\" is empty; a table of offsets or a take-off was expected");
        }
        return problems.isEmpty() ? Optional.of(rows) : Optional.empty();
    }

    private GridRow row(Row row) {
        List<Cell> read = new ArrayList<>();
        int last = 0;
        for (int i = 0; i < row.getCellCount(); i++) {
            org.dhatim.fastexcel.reader.Cell cell = row.getCell(i);
            Cell text = new Cell(row.getRowNum(), i + 1, cell == null ? "" : text(cell, row.getRowNum(), i + 1));
            if (!text.isEmpty()) {
                last = i + 1;
                cells++;
            }
            if (i < MOST_COLUMNS) {
                read.add(text);
            } else if (!text.isEmpty()) {
                problems.inCell(text, "", "", "stands beyond column " + MOST_COLUMNS + "; a table has " + Layout.MOST_STATIONS + " stations and "
                    + Layout.MOST_LINES + " lines at most");
                break;
            }
        }
        return new GridRow(row.getRowNum(), read.subList(0, Math.min(last, read.size())));
    }

    private String text(org.dhatim.fastexcel.reader.Cell cell, int row, int column) {
        String raw = cell.getRawValue() == null ? "" : cell.getRawValue();
        Cell here = new Cell(row, column, raw.strip());
        switch (cell.getType()) {
            case NUMBER:
                return number(cell, here);
            case FORMULA:
                return formula(cell, here);
            case STRING:
                return words(new Cell(row, column, cell.getText().replace('\u00a0', ' ').strip()));
            case BOOLEAN:
                problems.inCell(here, "", "", "is a yes or no; write a length or words");
                return "";
            case ERROR:
                problems.inCell(here, "", "", "is an error of the spreadsheet; write the value itself");
                return "";
            default:
                return "";
        }
    }

    private String words(Cell here) {
        if (here.text().length() > MOST_CHARACTERS) {
            problems.inCell(here, "", "", "has " + here.text().length() + " characters; a cell has " + MOST_CHARACTERS + " at most");
        }
        return here.text();
    }

    private String formula(org.dhatim.fastexcel.reader.Cell cell, Cell here) {
        if (here.isEmpty()) {
            if (cell.getFormula() != null && !cell.getFormula().isEmpty()) {
                problems.inCell(new Cell(here.row(), here.column(), "=" + cell.getFormula()), "", "",
                    "has never been worked out; open the file in the spreadsheet program, save it there, or write the value itself");
            }
            return "";
        }
        try {
            new BigDecimal(here.text());
            return number(cell, here);
        } catch (NumberFormatException words) {
            return words(here);
        }
    }

    /** The number as a sheet shows it, with a point. */
    private String number(org.dhatim.fastexcel.reader.Cell cell, Cell here) {
        String format = cell.getDataFormatString();
        if (format != null && DATE.matcher(format.replaceAll("\"[^\"]*\"|\\[[^\\]]*]|\\\\.|_.|General|Standard", "")).find()) {
            problems.inCell(here, "", "", "is a date: the spreadsheet program has turned what was typed into one, as it does with 2-3-4;"
                + " format the cell as Text first and then type it anew, or put an apostrophe before it, '2-3-4");
            return "";
        }
        try {
            BigDecimal shown = new BigDecimal(here.text()).round(SHOWN).stripTrailingZeros();
            if (shown.precision() - shown.scale() > 12 || shown.scale() > 12 && shown.signum() != 0) {
                problems.inCell(here, "", "", "is no length of a boat");
                return "";
            }
            return shown.toPlainString();
        } catch (NumberFormatException none) {
            problems.inCell(here, "", "", "is no number");
            return "";
        }
    }
}
