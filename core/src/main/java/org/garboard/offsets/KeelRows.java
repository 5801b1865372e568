package org.garboard.offsets;

import java.util.List;
import java.util.Optional;

/**
 * What a table gives of a keel below the skin: a keel, deadwood and all, of planks or metal, that hangs from the rabbet.
 *
 * @param name of the row of its bottom
 * @param bottoms heights of its bottom at the stations where it is, one after the other
 * @param sidings half its breadth there at its bottom; empty where it is as broad as at the rabbet
 */
public record KeelRows(String name, List<Entry> bottoms, List<Entry> sidings) {
    public KeelRows {
        bottoms = List.copyOf(bottoms);
        sidings = List.copyOf(sidings);
    }

    static Optional<KeelRows> of(OffsetTable table) {
        Optional<TableLine> bottom = row(table, Measure.HEIGHT);
        return bottom.map(row -> new KeelRows(row.name(), row.entries(),
            row(table, Measure.HALF_BREADTH).map(TableLine::entries).orElse(List.of())));
    }

    private static Optional<TableLine> row(OffsetTable table, Measure measure) {
        return table.lines().stream()
            .filter(row -> row.kind() == LineKind.KEEL_BOTTOM && row.measure() == measure).findFirst();
    }
}
