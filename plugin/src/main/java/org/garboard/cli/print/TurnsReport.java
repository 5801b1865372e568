package org.garboard.cli.print;

import java.io.PrintWriter;
import java.util.List;
import java.util.stream.Collectors;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.RowTurns;

/** Prints how fair the rows of a table run. */
public final class TurnsReport {
    private TurnsReport() {
    }

    public static void print(PrintWriter out, OffsetTable table) {
        List<RowTurns> turning = RowTurns.of(table);
        if (turning.isEmpty()) {
            out.println("No row turns from bending one way to bending the other, but for its rounding.");
            return;
        }
        out.println("Rows that turn from bending one way to bending the other, by more than their rounding explains:");
        TextTable rows = new TextTable("<line", "<gives", "turns", "<between stations");
        for (RowTurns row : turning) {
            rows.row(row.row().name(), row.row().measure() == Measure.HEIGHT ? "heights" : "half-breadths",
                Integer.toString(row.turns().size()), row.turns().stream()
                    .map(turn -> table.stations().get(turn.before()).name() + " and " + table.stations().get(turn.after()).name())
                    .collect(Collectors.joining(", ")));
        }
        rows.print(out);
    }
}
