package org.garboard.tablefile;

import java.util.List;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import org.garboard.slips.Doubt;
import org.garboard.slips.Slip;
import org.garboard.units.LengthUnit;

/**
 * A cell that is likely wrong.
 *
 * @param grid how the file names its cells
 * @param file the file's name as the caller gave it
 * @param row line of the file, the first is 1
 * @param column place in the line, the first is 1
 * @param place where that is on the boat, "station 3, WL 1-0-0"
 * @param measure "height" or "half-breadth"
 * @param found what stands there
 * @param proposal what would stand there without the slip, as the file writes lengths
 * @param slip the same in metres, its kind, and how sure it is
 */
public record LikelySlip(GridKind grid, String file, int row, int column, String place, String measure, String found, String proposal,
                         Slip slip) {
    private static final double EIGHTH = LengthUnit.INCH.metres() / 8;

    /** The whole in one line: {@code boat.csv:14, station 3, WL 1-0-0: column 6: half-breadth "2-3-4" does not …}. */
    public String message() {
        return "likely slip: " + grid.place(file, OptionalInt.of(row), OptionalInt.of(column)) + ", " + place + ": "
            + grid.columnBehind(OptionalInt.of(column)) + measure + " \"" + found
            + "\" does not go with the cells around it; " + proposal + " would, " + undone() + doubts(slip.doubts());
    }

    private String undone() {
        String less = slip.size() > 0 ? " less" : " more";
        long eighths = Math.round(Math.abs(slip.size()) / EIGHTH);
        return switch (slip.kind()) {
            case FOOT -> "a foot" + less;
            case INCH -> "an inch" + less;
            case EIGHTHS -> (eighths == 1 ? "an eighth" : eighths + " eighths") + less;
            case SWAPPED_DIGITS -> "with two digits swapped";
            case MOVED_POINT -> "with the point moved";
        };
    }

    private static String doubts(List<Doubt> doubts) {
        return doubts.isEmpty() ? "" : doubts.stream().map(LikelySlip::words).collect(Collectors.joining("; ", " (less sure: ", ")"));
    }

    private static String words(Doubt doubt) {
        return switch (doubt) {
            case END_STATION -> "the end station has neighbours on one side only";
            case OTHER_VALUE -> "another slip of this cell is not ruled out";
            case OTHER_CELL -> "a slip of another cell is not ruled out";
        };
    }

    @Override
    public String toString() {
        return message();
    }
}
