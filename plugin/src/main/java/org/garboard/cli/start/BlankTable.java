package org.garboard.cli.start;

import java.io.IOException;
import java.io.StringReader;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVPrinter;
import org.apache.commons.csv.CSVRecord;

/**
 * A table of a demo boat with its figures taken out: titles, units, stations and the names of lines stay, since
 * they show how such a table is laid out.
 */
final class BlankTable {
    private static final List<String> KEPT_WHOLE = List.of("Units", "Station", "Distances", "Trim from");

    private BlankTable() {
    }

    /** @param table the text of a demo's table; @param boat the name that stands in its title from now on */
    static String of(String table, String boat) {
        char delimiter = table.lines().findFirst().orElse("").indexOf(';') >= 0 ? ';' : ',';
        CSVFormat format = CSVFormat.RFC4180.builder().setDelimiter(delimiter).setRecordSeparator('\n').setNullString("").get();
        StringWriter out = new StringWriter();
        try (CSVParser rows = format.parse(new StringReader(table)); CSVPrinter printer = new CSVPrinter(out, format)) {
            for (CSVRecord row : rows) {
                if (row.getRecordNumber() == 1) {
                    printer.printRecord(row.get(0), boat);
                } else if (!"Note".equals(row.get(0))) {
                    printer.printRecord(blank(row));
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return out.toString();
    }

    private static List<String> blank(CSVRecord row) {
        String name = row.get(0);
        List<String> cells = new ArrayList<>(row.toList());
        if (name == null || !KEPT_WHOLE.contains(name)) {
            // the second cell after "Step at" names a station
            for (int k = "Step at".equals(name) ? 2 : 1; k < cells.size(); k++) {
                if (cells.get(k) != null && cells.get(k).matches("[-—]|-?[0-9].*")) {
                    cells.set(k, null);
                }
            }
        } else if (name.equals("Trim from")) {
            cells.set(cells.size() - 1, null);
        }
        return cells;
    }
}
