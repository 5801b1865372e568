package org.garboard.slips.boat;

import java.util.ArrayList;
import java.util.List;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.NamedLine;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;
import org.garboard.slips.fit.Along;

/** The table's rows as the search takes them: a column of unknowns for every row of a named line, and the cells. */
public final class Rows {
    private final OffsetTable table;
    private final Along along;
    private final List<Integer> named = new ArrayList<>();
    private final int[] columnOfY;
    private final int[] columnOfZ;
    private final List<Cell> cells = new ArrayList<>();

    /** @param table whose named lines have all their rows */
    public Rows(OffsetTable table) {
        this.table = table;
        this.along = new Along(table.stations().stream().mapToDouble(Station::x).toArray());
        List<NamedLine> lines = NamedLine.fromKeelOutward(table);
        columnOfY = new int[lines.size()];
        columnOfZ = new int[lines.size()];
        for (int l = 0; l < lines.size(); l++) {
            boolean keel = lines.get(l).kind() == LineKind.KEEL;
            columnOfY[l] = keel ? -1 : column(lines.get(l).halfBreadths().orElseThrow());
            columnOfZ[l] = column(lines.get(l).heights().orElseThrow());
        }
        for (int row = 0; row < table.lines().size(); row++) {
            if (!named.contains(row) && !isPoint(table.lines().get(row))) {
                continue;
            }
            for (Entry entry : table.lines().get(row).entries()) {
                cells.add(new Cell(row, entry.station(), entry.value()));
            }
        }
    }

    /** The edge of a flat keel shares the row of its heights with the keel. */
    private int column(int row) {
        if (!named.contains(row)) {
            named.add(row);
        }
        return named.indexOf(row);
    }

    Along along() {
        return along;
    }

    int stations() {
        return along.stations();
    }

    public List<Cell> cells() {
        return cells;
    }

    public TableLine row(Cell cell) {
        return table.lines().get(cell.row());
    }

    /** Whether the cell belongs to a waterline or a buttock. */
    boolean isPoint(Cell cell) {
        return isPoint(row(cell));
    }

    private static boolean isPoint(TableLine row) {
        return row.kind() == LineKind.WATERLINE && row.measure() == Measure.HALF_BREADTH
            || row.kind() == LineKind.BUTTOCK && row.measure() == Measure.HEIGHT;
    }

    public boolean isAtEnd(Cell cell) {
        return cell.station() == 0 || cell.station() == stations() - 1;
    }

    int lines() {
        return columnOfZ.length;
    }

    int panels() {
        return lines() - 1;
    }

    /** Columns of the named rows come first. */
    int namedColumns() {
        return named.size();
    }

    /** Column of a named row, -1 for others. */
    int columnOf(Cell cell) {
        return named.indexOf(cell.row());
    }

    /** Column of a line's half-breadths; -1 for the keel, which stands at 0. */
    int columnOfY(int line) {
        return columnOfY[line];
    }

    int columnOfZ(int line) {
        return columnOfZ[line];
    }
}
