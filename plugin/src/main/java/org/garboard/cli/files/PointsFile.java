package org.garboard.cli.files;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
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
    private static final Pattern NUMBER = Pattern.compile("[+-]?(?:[0-9]+\\.?[0-9]*|\\.[0-9]+)(?:[eE][+-]?[0-9]+)?");

    private final Path file;
    private final List<PlanPoint> places = new ArrayList<>();
    private final List<String> faults = new ArrayList<>();

    private PointsFile(Path file) {
        this.file = file;
    }

    public static List<PlanPoint> read(Path file) throws InputFault {
        String text = new String(InputFile.read(file, MOST_BYTES), StandardCharsets.UTF_8);
        PointsFile points = new PointsFile(file);
        points.parse(text.startsWith("\uFEFF") ? text.substring(1) : text);
        if (!points.faults.isEmpty()) {
            throw new InputFault(points.faults);
        }
        return points.places;
    }

    private void parse(String text) {
        CSVFormat format = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(true).get();
        try (CSVParser rows = CSVParser.parse(new StringReader(text), format)) {
            int x = -1;
            int y = -1;
            for (CSVRecord row : rows) {
                if (row.getRecordNumber() == 1) {
                    x = row.toList().indexOf("x_m");
                    y = row.toList().indexOf("y_m");
                    if (x < 0 || y < 0) {
                        faults.add(file + ":1: the heading is \"" + String.join(",", row.toList())
                            + "\"; the columns x_m and y_m are expected, such as x_m,y_m");
                        return;
                    }
                } else {
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
        return Double.parseDouble(cell);
    }
}
