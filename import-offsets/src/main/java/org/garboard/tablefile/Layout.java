package org.garboard.tablefile;

import java.util.List;
import java.util.Optional;

/**
 * A table's cells, whichever way round it stands.
 *
 * @param stations the cells with the stations' names, in the order of the file
 * @param distances the stations' distances from 0, if the file gives them
 * @param lines the rows of both blocks, in the order of the file
 */
record Layout(List<Cell> stations, Optional<Strip> distances, List<Strip> lines) {
    static final int MOST_STATIONS = 500;
    static final int MOST_LINES = 200;

    Layout {
        stations = List.copyOf(stations);
        lines = List.copyOf(lines);
    }

    /** Sorts out the lines of a file; headings go where headings are read. */
    static Optional<Layout> of(List<GridRow> rows, Headings headings, Problems problems) {
        Optional<GridRow> station = rows.stream().filter(row -> Labels.isStation(row.first().text())).findFirst();
        if (station.isEmpty()) {
            problems.inFile("the line that begins with \"Station\" lies within a quoted cell that begins above it");
            return Optional.empty();
        }
        boolean namesLines = station.get().filledFrom(1).stream().map(Cell::text)
            .anyMatch(text -> Labels.line(text).isPresent() || Labels.isDistance(text) || Labels.block(text).isPresent());
        Layout layout = namesLines
            ? StationsInRows.read(rows, headings, problems)
            : StationsInColumns.read(rows, headings, problems);
        if (layout.stations.size() > MOST_STATIONS) {
            problems.inFile("the table has " + layout.stations.size() + " stations; " + MOST_STATIONS + " are the most");
            return Optional.empty();
        }
        if (layout.lines.size() > MOST_LINES) {
            problems.inFile("the table has " + layout.lines.size() + " lines; " + MOST_LINES + " are the most");
            return Optional.empty();
        }
        return Optional.of(layout);
    }

    /** A heading row that is not known by its word stands above the table and is short. */
    static boolean mayBeHeading(GridRow row) {
        return row.cells().stream().filter(cell -> !cell.isEmpty()).count() <= 2;
    }

    /** Says that a row goes on past its end. */
    static void refuseBeyond(Cell cell, String place, String end, Problems problems) {
        problems.inCell(cell, place, "", "stands beyond the last of " + end
            + (cell.text().matches("[0-9]+") ? "; if commas are decimal marks here, put ; between the cells" : ""));
    }

    /** Says that a label is not known. */
    static void refuseLabel(Cell label, Problems problems) {
        if (label.isEmpty()) {
            problems.inCell(label, "", "", "is no label; known are " + Labels.KNOWN);
        } else {
            problems.inCell(label, "", "", "is not a line that is known; known are " + Labels.KNOWN);
        }
    }
}
