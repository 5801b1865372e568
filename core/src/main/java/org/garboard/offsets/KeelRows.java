package org.garboard.offsets;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What is given of a keel below the skin: a keel, deadwood and all, of planks or metal, that hangs from the rabbet.
 *
 * @param name of its bottom
 * @param cuts its bottom from forward aft, from where it begins to where it ends
 */
public record KeelRows(String name, List<Cut> cuts) {

    /**
     * Its bottom at one place.
     *
     * @param halfSiding half its breadth there [m]; where it is not told it is that at the rabbet
     */
    public record Cut(double x, double z, OptionalDouble halfSiding) {
    }

    public KeelRows {
        cuts = List.copyOf(cuts);
    }

    static Optional<KeelRows> of(OffsetTable table) {
        Optional<TableLine> siding = row(table, Measure.HALF_BREADTH);
        return row(table, Measure.HEIGHT).map(row -> new KeelRows(row.name(), row.entries().stream()
            .map(entry -> new Cut(table.stations().get(entry.station()).x(), entry.value(),
                siding.map(each -> each.at(entry.station())).orElse(OptionalDouble.empty()))).toList()));
    }

    private static Optional<TableLine> row(OffsetTable table, Measure measure) {
        return table.lines().stream()
            .filter(row -> row.kind() == LineKind.KEEL_BOTTOM && row.measure() == measure).findFirst();
    }
}
