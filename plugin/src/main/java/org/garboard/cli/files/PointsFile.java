package org.garboard.cli.files;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;
import org.garboard.siting.PlanPoint;

/** Reads a CSV file of places with the columns {@code x_m,y_m}; others may stand beside them. */
public final class PointsFile {
    private static final int MOST_BYTES = 64 << 20;
    /** Our choice: far beyond any hull. */
    private static final double MOST_METRES = 1e6;
    private static final Pattern NUMBER = Pattern.compile("[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?");

    private final Path file;
    private final List<PlanPoint> places = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();

    private PointsFile(Path file) {
        this.file = file;
    }

    public static List<PlanPoint> read(Path file) throws InputFault {
        String text = text(file, InputFile.read(file, MOST_BYTES));
        PointsFile points = new PointsFile(file);
        points.parse(text.startsWith("\uFEFF") ? text.substring(1) : text);
        if (!points.faults.isEmpty()) {
            throw new InputFault(points.faults);
        }
        return points.places;
    }

    private static String text(Path file, byte[] bytes) throws InputFault {
        try {
            String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
            if (text.indexOf('\0') < 0) {
                return text;
            }
        } catch (CharacterCodingException e) {
            // told below, as for zero bytes
        }
        throw new InputFault(file + ": the file is not text in UTF-8; save it as CSV in UTF-8");
    }

    private void parse(String text) {
        CSVFormat format = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();
        try (CSVParser rows = CSVParser.parse(new StringReader(text), format)) {
            int x = -1;
            int y = -1;
            int columns = 0;
            for (CSVRecord row : rows) {
                if (row.getRecordNumber() == 1) {
                    columns = row.size();
                    x = row.toList().indexOf("x_m");
                    y = row.toList().indexOf("y_m");
                    if (x < 0 || y < 0) {
                        faults.add(file + ":1: the heading is \"" + String.join(",", row.toList())
                            + "\"; the columns x_m and y_m are expected, parted by a comma: x_m,y_m");
                        return;
                    }
                } else {
                    refuseSurplus(row, rows.getCurrentLineNumber(), columns);
                    place(row, rows.getCurrentLineNumber(), x, y);
                }
            }
            if (x < 0) {
                faults.add(file + ": the file is empty; the heading x_m,y_m and a row for each place are expected");
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        } catch (UncheckedIOException e) {
            faults.add(file + ": this is not CSV as RFC 4180 has it: " + e.getCause().getMessage());
        }
    }

    /** Decimal commas look like this: "5,2,0,3". */
    private void refuseSurplus(CSVRecord row, long line, int columns) {
        for (int column = columns; column < row.size(); column++) {
            if (!row.get(column).isBlank()) {
                faults.add(file + ":" + line + ": column " + (column + 1) + ": \"" + row.get(column)
                    + "\" stands beyond the last heading; write decimals with a point, and head every column");
                return;
            }
        }
    }

    private void place(CSVRecord row, long line, int x, int y) {
        int before = faults.size();
        double atX = number(row, line, x, "x_m");
        double atY = number(row, line, y, "y_m");
        if (faults.size() == before) {
            places.add(new PlanPoint(atX, atY));
        }
    }

    private double number(CSVRecord row, long line, int column, String name) {
        String cell = column < row.size() ? row.get(column).strip() : "";
        if (!NUMBER.matcher(cell).matches()) {
            faults.add(file + ":" + line + ": column " + (column + 1) + ", " + name + ": "
                + (cell.isEmpty() ? "nothing stands there" : "\"" + cell + "\" is not a number")
                + "; write metres with a decimal point, such as 5.2");
            return Double.NaN;
        }
        double metres = Double.parseDouble(cell);
        if (Math.abs(metres) > MOST_METRES) {
            faults.add(file + ":" + line + ": column " + (column + 1) + ", " + name + ": \"" + cell
                + "\" is no place on a boat; write metres, such as 5.2");
        }
        return metres;
    }
}
