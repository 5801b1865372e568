package org.garboard.tablefile;

import java.util.List;
import java.util.Optional;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.slips.Slip;
import org.garboard.slips.SlipFindings;
import org.garboard.slips.SlipSearch;

/** A table of offsets and the cells of the file that it was read from. */
public final class WrittenTable {
    private final GridKind grid;
    private final String file;
    private final TableUnit unit;
    private final List<Cell> stations;
    private final List<Strip> strips;
    private final StationOrder order;
    private final OffsetTable table;

    /** @param strips by row of the table */
    WrittenTable(GridKind grid, String file, TableUnit unit, List<Cell> stations, List<Strip> strips, StationOrder order, OffsetTable table) {
        this.grid = grid;
        this.file = file;
        this.unit = unit;
        this.stations = List.copyOf(stations);
        this.strips = List.copyOf(strips);
        this.order = order;
        this.table = table;
    }

    /** Number of filled cells, which the time for {@link #slips} grows with. */
    public int cells() {
        return table.lines().stream().mapToInt(line -> line.entries().size()).sum();
    }

    /** Looks for slips, which takes a moment; the table may have faults. */
    public SlipReport slips() {
        SlipFindings findings = SlipSearch.in(table, unit.writing());
        if (findings instanceof SlipFindings.NotSearched not) {
            return new SlipReport(List.of(), Optional.of(not.reason()));
        }
        return new SlipReport(((SlipFindings.Searched) findings).slips().stream().map(this::likely).toList(), Optional.empty());
    }

    private LikelySlip likely(Slip slip) {
        int station = order.index(slip.station());
        Strip strip = strips.get(slip.line());
        Cell cell = strip.cells().get(station);
        return new LikelySlip(grid, file, cell.row(), cell.column(),
            StationPlaces.place(stations.get(station)) + ", " + strip.label().text(),
            table.lines().get(slip.line()).measure() == Measure.HEIGHT ? "height" : "half-breadth",
            cell.text(), proposal(slip, cell), slip);
    }

    /** With the table's decimal mark, and the unit where the cell has one of its own. */
    private String proposal(Slip slip, Cell cell) {
        boolean comma = strips.stream().flatMap(strip -> strip.cells().stream()).anyMatch(other -> other.text().contains(","));
        String marked = comma ? slip.proposal().replace('.', ',') : slip.proposal();
        return marked + (cell.text().matches(".*[a-z]") ? unit.suffix() : "");
    }
}
