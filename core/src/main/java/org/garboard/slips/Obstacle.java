package org.garboard.slips;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.NamedLine;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.TableLine;

/** Why a table cannot be searched for slips. */
final class Obstacle {
    /** Fewer tell nothing of a slip in one of them. */
    private static final int FEWEST_STATIONS = SlipSearch.FEWEST_STATIONS;
    /** Products of numbers, of which the built program does some 3e7 a second; our choice. */
    private static final double MOST_WORK = 2e8;
    private static final int MOST_COLUMNS_OF_PANEL = 13;

    private Obstacle() {
    }

    /** The reason, to follow "slips were not looked for: "; none if the table can be searched. */
    static Optional<String> to(OffsetTable table) {
        int stations = table.stations().size();
        if (stations < FEWEST_STATIONS) {
            return Optional.of("the table has " + stations + " stations; " + FEWEST_STATIONS + " are the least");
        }
        for (int j = 1; j < stations; j++) {
            if (!(table.stations().get(j).x() > table.stations().get(j - 1).x()) && !table.isAfterFace(j)) {
                return Optional.of("the stations are not in order from forward aft");
            }
        }
        if (Stretch.covering(table).isEmpty()) {
            return Optional.of("no length between steps has " + FEWEST_STATIONS + " stations, which are the least");
        }
        List<NamedLine> lines = NamedLine.fromKeelOutward(table);
        for (LineKind kind : List.of(LineKind.KEEL, LineKind.SHEER)) {
            if (lines.stream().noneMatch(line -> line.kind() == kind)) {
                return Optional.of("no row gives the " + (kind == LineKind.KEEL ? "keel" : "sheer"));
            }
        }
        return lines.stream().map(line -> row(table, line)).flatMap(Optional::stream).findFirst()
                .or(() -> work(table, lines) > MOST_WORK
                    ? Optional.of("the table has more stations and lines than can be compared in a few seconds")
                    : Optional.empty());
    }

    private static Optional<String> row(OffsetTable table, NamedLine line) {
        List<OptionalInt> rows = line.kind() == LineKind.KEEL
                ? List.of(line.heights()) : List.of(line.heights(), line.halfBreadths());
        for (OptionalInt row : rows) {
            if (row.isEmpty()) {
                return Optional.of(line.name() + " stands in one block only");
            }
            TableLine values = table.lines().get(row.getAsInt());
            if (values.entries().size() < FEWEST_STATIONS) {
                return Optional.of(line.name() + " is given at " + values.entries().size() + " stations; "
                    + FEWEST_STATIONS + " are the least");
            }
        }
        return Optional.empty();
    }

    /** Cells times unknowns times width of the band, over all stretches. */
    private static double work(OffsetTable table, List<NamedLine> lines) {
        double work = 0;
        for (Stretch stretch : Stretch.covering(table)) {
            OffsetTable part = stretch.of(table);
            int cells = part.lines().stream().mapToInt(line -> line.entries().size()).sum();
            int points = cells / part.stations().size() / (lines.size() - 1) + 2;
            int columns = 2 * lines.size() + (lines.size() - 1) * Math.min(MOST_COLUMNS_OF_PANEL, points);
            work += 4.0 * cells * part.stations().size() * columns * columns;
        }
        return work;
    }
}
