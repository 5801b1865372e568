package org.garboard.offsets;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.stream.IntStream;

/**
 * A line of the hull that has its own name in the table, and its rows there.
 *
 * @param heights index of the row that gives its heights; of a flat keel's edge, the keel's
 * @param halfBreadths index of the row that gives its half-breadths; none for the keel, which stands at 0
 */
public record NamedLine(String name, LineKind kind, OptionalInt heights, OptionalInt halfBreadths) {

    /** Keel, flat keel's edge, top of a box keel, chines from the keel outward, sheer: as far as the table has them. */
    public static List<NamedLine> fromKeelOutward(OffsetTable table) {
        List<NamedLine> lines = new ArrayList<>();
        OptionalInt keel = row(table, LineKind.KEEL, Measure.HEIGHT);
        LineKind sided = table.lines().stream().anyMatch(row -> row.kind() == LineKind.RABBET) ? LineKind.RABBET : LineKind.HALF_SIDING;
        OptionalInt siding = row(table, sided, Measure.HALF_BREADTH);
        if (keel.isPresent()) {
            String name = table.lines().get(keel.getAsInt()).name();
            lines.add(new NamedLine(name, LineKind.KEEL, keel, OptionalInt.empty()));
        }
        if (siding.isPresent()) {
            String name = table.lines().get(siding.getAsInt()).name();
            lines.add(new NamedLine(name, sided, keel, siding));
        }
        first(table, LineKind.KEEL_TOP).ifPresent(lines::add);
        lines.addAll(chines(table));
        first(table, LineKind.SHEER).ifPresent(lines::add);
        return lines;
    }

    /** The line's point at a station, if the table gives both its height and its half-breadth. */
    Optional<SectionPoint> at(OffsetTable table, int station) {
        OptionalDouble z = value(table, heights, station);
        OptionalDouble y = kind == LineKind.KEEL ? OptionalDouble.of(0) : value(table, halfBreadths, station);
        if (y.isEmpty() || z.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new SectionPoint(y.getAsDouble(), z.getAsDouble(), row()));
    }

    /** The row by which the line is known: its heights, or of a flat keel's edge the half-siding. */
    int row() {
        return kind == LineKind.HALF_SIDING || kind == LineKind.RABBET || heights.isEmpty() ? halfBreadths.getAsInt() : heights.getAsInt();
    }

    private static List<NamedLine> chines(OffsetTable table) {
        List<NamedLine> chines = new ArrayList<>();
        for (TableLine row : table.lines()) {
            if (row.kind() == LineKind.CHINE && chines.stream().noneMatch(c -> c.name().equals(row.name()))) {
                chines.add(inBothBlocks(table, row));
            }
        }
        List<NamedLine> ordered = new ArrayList<>(chines);
        ordered.sort(Comparator.comparingLong(chine -> chine.howFarOut(table, chines)));
        return ordered;
    }

    private static Optional<NamedLine> first(OffsetTable table, LineKind kind) {
        return table.lines().stream()
            .filter(row -> row.kind() == kind)
            .findFirst()
            .map(row -> inBothBlocks(table, row));
    }

    private static NamedLine inBothBlocks(OffsetTable table, TableLine row) {
        OptionalInt heights = row(table, row.kind(), row.name(), Measure.HEIGHT);
        OptionalInt halfBreadths = row(table, row.kind(), row.name(), Measure.HALF_BREADTH);
        return new NamedLine(row.name(), row.kind(), heights, halfBreadths);
    }

    /**
     * At how many stations it lies farther out than another chine, over all of them. What counts is y + z,
     * which rises from one chine to the next one out, whether the skin between them is a bottom (y rises) or
     * a side (z rises); and that it does so at most stations, so that a slip in one cell changes no order.
     */
    private long howFarOut(OffsetTable table, List<NamedLine> chines) {
        return chines.stream()
            .mapToLong(other -> IntStream.range(0, table.stations().size())
                .filter(station -> sum(table, station) > other.sum(table, station))
                .count())
            .sum();
    }

    /** y + z at a station [m]; NaN where it is not given, which is farther out than nothing. */
    private double sum(OffsetTable table, int station) {
        return at(table, station).map(point -> point.y() + point.z()).orElse(Double.NaN);
    }

    private static OptionalInt row(OffsetTable table, LineKind kind, Measure measure) {
        for (int i = 0; i < table.lines().size(); i++) {
            TableLine row = table.lines().get(i);
            if (row.kind() == kind && row.measure() == measure) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private static OptionalInt row(OffsetTable table, LineKind kind, String name, Measure measure) {
        for (int i = 0; i < table.lines().size(); i++) {
            TableLine row = table.lines().get(i);
            if (row.kind() == kind && row.measure() == measure && row.name().equals(name)) {
                return OptionalInt.of(i);
            }
        }
        return OptionalInt.empty();
    }

    private static OptionalDouble value(OffsetTable table, OptionalInt row, int station) {
        return row.isPresent() ? table.lines().get(row.getAsInt()).at(station) : OptionalDouble.empty();
    }
}
