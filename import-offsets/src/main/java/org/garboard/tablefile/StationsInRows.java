package org.garboard.tablefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.offsets.Measure;

/**
 * The table turned round: a station in each row, a line of the hull in each column. The block headings
 * stand above the lines' names, or among them at the head of a column left blank; the blocks may
 * also stand one below the other, each under its own line of names.
 */
final class StationsInRows {
    private final Headings headings;
    private final Problems problems;
    private final List<Cell> stations = new ArrayList<>();
    private final List<Column> distances = new ArrayList<>();
    private final List<Column> lines = new ArrayList<>();
    private List<Cell> blockHeadings = List.of();
    private Optional<Names> names = Optional.empty();

    /** A column under a label, gathering its cells. */
    private record Column(Cell label, Optional<Measure> block, List<Cell> cells) {
        Strip strip() {
            return new Strip(label, block, cells);
        }
    }

    /** A line of names and what has been read under it: by column, empty where none is to be read. */
    private static final class Names {
        final GridRow row;
        final boolean first;
        final List<Optional<Column>> columns = new ArrayList<>();
        int stationsRead;

        Names(GridRow row, boolean first) {
            this.row = row;
            this.first = first;
        }
    }

    private StationsInRows(Headings headings, Problems problems) {
        this.headings = headings;
        this.problems = problems;
    }

    static Layout read(List<GridRow> rows, Headings headings, Problems problems) {
        StationsInRows table = new StationsInRows(headings, problems);
        rows.forEach(table::sort);
        table.closeNames();
        return new Layout(table.stations, table.distances.stream().findFirst().map(Column::strip),
            table.lines.stream().map(Column::strip).toList());
    }

    private void sort(GridRow row) {
        List<Cell> filled = row.cells().stream().filter(cell -> !cell.isEmpty()).toList();
        if (Labels.isStation(row.first().text())) {
            closeNames();
            openNames(row);
        } else if (filled.stream().allMatch(cell -> Labels.block(cell.text()).isPresent())) {
            closeNames();
            blockHeadings = filled;
        } else if (Headings.isHeading(row.first().text())) {
            headings.read(row);
        } else if (names.isPresent()) {
            station(row, names.get());
        } else if (stations.isEmpty() && Layout.mayBeHeading(row)) {
            headings.read(row);
        } else {
            problems.inCell(row.first(), "", "", "stands outside the table; a line of names beginning with Station was expected");
        }
    }

    private void openNames(GridRow row) {
        Names opened = new Names(row, stations.isEmpty());
        Optional<Measure> within = Optional.empty();
        for (Cell label : row.filledFrom(1)) {
            if (Labels.block(label.text()).isPresent()) {
                within = Labels.block(label.text());
                opened.columns.add(Optional.empty());
            } else {
                opened.columns.add(column(label, within.isPresent() ? within : blockAbove(label)));
            }
        }
        names = Optional.of(opened);
    }

    private Optional<Measure> blockAbove(Cell label) {
        Optional<Measure> block = Optional.empty();
        for (Cell heading : blockHeadings) {
            if (heading.column() <= label.column()) {
                block = Labels.block(heading.text());
            }
        }
        return block;
    }

    private Optional<Column> column(Cell label, Optional<Measure> block) {
        Column column = new Column(label, block, new ArrayList<>());
        if (Labels.isDistance(label.text())) {
            if (!distances.isEmpty()) {
                problems.inCell(label, "", "", "gives the distances a second time, after line "
                    + distances.get(0).label().row() + "; leave one out");
                return Optional.empty();
            }
            distances.add(column);
        } else if (Labels.line(label.text()).isPresent()) {
            lines.add(column);
        } else {
            Layout.refuseLabel(label, problems);
            return Optional.empty();
        }
        return Optional.of(column);
    }

    private void station(GridRow row, Names under) {
        Cell name = row.first();
        if (name.isEmpty()) {
            problems.inCell(name, "", "", "names no station; name each row's station");
        }
        if (under.first) {
            stations.add(name);
        } else if (under.stationsRead < stations.size() && !name.text().equals(stations.get(under.stationsRead).text())) {
            Cell before = stations.get(under.stationsRead);
            problems.inCell(name, "", "station", "stands where line " + before.row() + " has " + before.quoted()
                + "; give both blocks the same stations in the same order");
        }
        under.stationsRead++;
        cells(row, under);
    }

    private void cells(GridRow row, Names under) {
        int wanted = under.columns.size();
        if (row.cells().size() - 1 < wanted) {
            problems.inRow(row.number(), "station " + row.first().text(), row.cells().size() - 1 + " cell(s) for "
                + wanted + " columns; give each its cell, blank or - where the line does not cross");
        }
        for (int i = 0; i < wanted; i++) {
            Cell cell = row.at(i + 1);
            Optional<Column> column = under.columns.get(i);
            if (column.isPresent()) {
                column.get().cells().add(cell);
            } else if (!cell.isEmpty() && Labels.block(under.row.at(i + 1).text()).isPresent()) {
                problems.inCell(cell, "station " + row.first().text(), "", "stands under a block heading; leave it blank");
            }
        }
        row.filledFrom(1 + wanted).stream().filter(cell -> !cell.isEmpty()).findFirst().ifPresent(cell ->
            Layout.refuseBeyond(cell, "station " + row.first().text(), wanted + " columns", problems));
    }

    private void closeNames() {
        if (names.isPresent() && !names.get().first && names.get().stationsRead != stations.size()
            && names.get().stationsRead > 0) {
            problems.inRow(names.get().row.number(), "", names.get().stationsRead + " station(s) stand below this line and "
                + stations.size() + " below the first such line; give both blocks the same stations in the same order");
        }
        if (names.isPresent() && names.get().stationsRead == 0) {
            problems.inRow(names.get().row.number(), "", "no stations stand below this line");
        }
        names = Optional.empty();
    }
}
