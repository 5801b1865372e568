package org.garboard.tablefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.offsets.Measure;

/** The table as books print it: a line of the hull in each row, a station in each column. */
final class StationsInColumns {
    private final Headings headings;
    private final Problems problems;
    private final List<Cell> stations = new ArrayList<>();
    private final List<LineRow> lineRows = new ArrayList<>();
    private Optional<GridRow> distanceRow = Optional.empty();
    private Optional<Measure> block = Optional.empty();

    private record LineRow(GridRow row, Optional<Measure> block) {
    }

    private StationsInColumns(Headings headings, Problems problems) {
        this.headings = headings;
        this.problems = problems;
    }

    static Layout read(List<GridRow> rows, Headings headings, Problems problems) {
        StationsInColumns table = new StationsInColumns(headings, problems);
        rows.forEach(table::sort);
        Optional<Strip> distances = table.distanceRow.map(row -> table.strip(row, Optional.empty()));
        List<Strip> lines = table.lineRows.stream().map(line -> table.strip(line.row, line.block)).toList();
        return new Layout(table.stations, distances, lines);
    }

    private void sort(GridRow row) {
        Cell first = row.first();
        if (Labels.isStation(first.text())) {
            stations(row);
        } else if (Labels.isDistance(first.text())) {
            distances(row);
        } else if (Labels.block(first.text()).isPresent()) {
            block = Labels.block(first.text());
            row.filledFrom(1).stream().filter(cell -> !cell.isEmpty()).forEach(cell ->
                problems.inCell(cell, "", "", "stands beside a block heading; leave the rest of its line blank"));
        } else if (Labels.line(first.text()).isPresent()) {
            lineRows.add(new LineRow(row, block));
        } else if (Headings.isHeading(first.text()) || isAboveTable() && Layout.mayBeHeading(row)) {
            headings.read(row);
        } else {
            Layout.refuseLabel(first, problems);
        }
    }

    private boolean isAboveTable() {
        return stations.isEmpty() && block.isEmpty();
    }

    private void stations(GridRow row) {
        List<Cell> names = row.filledFrom(1);
        names.stream().filter(Cell::isEmpty).forEach(cell ->
            problems.inCell(cell, "", "", "names no station; name each column's station"));
        if (stations.isEmpty()) {
            stations.addAll(names);
        } else {
            repeatedStations(names, row);
        }
    }

    private void repeatedStations(List<Cell> names, GridRow row) {
        if (names.size() != stations.size()) {
            problems.inRow(row.number(), "", names.size() + " stations are named here and " + stations.size()
                + " in line " + stations.get(0).row() + "; name the same");
            return;
        }
        for (int i = 0; i < names.size(); i++) {
            if (!names.get(i).text().equals(stations.get(i).text())) {
                problems.inCell(names.get(i), "", "station", "is called " + stations.get(i).quoted() + " in line "
                    + stations.get(i).row() + "; name the same");
            }
        }
    }

    private void distances(GridRow row) {
        if (distanceRow.isPresent()) {
            problems.inCell(row.first(), "", "", "gives the distances a second time, after line "
                + distanceRow.get().number() + "; leave one out");
        } else {
            distanceRow = Optional.of(row);
        }
    }

    private Strip strip(GridRow row, Optional<Measure> measure) {
        int given = row.cells().size() - 1;
        if (given < stations.size()) {
            problems.inRow(row.number(), row.first().text(), given + " cell(s) for " + stations.size()
                + " stations; give each its cell, blank or - where the line does not cross");
        }
        row.filledFrom(1 + stations.size()).stream().filter(cell -> !cell.isEmpty()).findFirst().ifPresent(cell ->
            Layout.refuseBeyond(cell, row.first().text(), stations.size() + " stations", problems));
        return new Strip(row.first(), measure, row.cells().subList(1, 1 + Math.min(given, stations.size())));
    }
}
