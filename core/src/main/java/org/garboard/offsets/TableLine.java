package org.garboard.offsets;

import java.util.List;
import java.util.OptionalDouble;

/**
 * One row of the table (or one column, where stations stand in rows).
 *
 * @param kind what the row describes
 * @param name the line's name; rows of one named line in the two blocks share it
 * @param level height of a waterline, distance of a buttock from the centreline [m]; 0 for named lines
 * @param measure the block it stands in
 * @param entries the filled cells, by rising station index
 */
public record TableLine(LineKind kind, String name, double level, Measure measure, List<Entry> entries) {
    public TableLine {
        entries = List.copyOf(entries);
    }

    /** The entry at a station [m], if the line crosses it. */
    public OptionalDouble at(int station) {
        for (Entry entry : entries) {
            if (entry.station() == station) {
                return OptionalDouble.of(entry.value());
            }
        }
        return OptionalDouble.empty();
    }

    /** The row at some of the stations, counted from the first of them. */
    TableLine part(StationRun run) {
        return new TableLine(kind, name, level, measure, entries.stream()
            .filter(entry -> entry.station() >= run.from() && entry.station() < run.to())
            .map(entry -> new Entry(entry.station() - run.from(), entry.value())).toList());
    }
}
