package org.garboard.tablefile;

import java.util.OptionalInt;
import org.garboard.filetext.HarmlessText;

/**
 * Something in a file that keeps it from being read as a table of offsets.
 *
 * @param grid how the file names its cells
 * @param file the file's name as the caller gave it
 * @param row line of the file, the first is 1; none if it concerns the whole file
 * @param column place in the line, the first is 1; none if it concerns the whole line
 * @param place where that is on the boat, "station 3, WL 1-0-0"; empty if nowhere
 * @param found what stands there, quoted; empty if nothing is to be shown
 * @param reason what is wrong with it, what was expected, what would work
 */
public record TableProblem(GridKind grid, String file, OptionalInt row, OptionalInt column, String place, String found, String reason) {

    /** The whole in one line, of a spreadsheet with the cell's name: {@code boat.csv:14, station 3, WL 1-0-0: column 6: half-breadth "2-13-0" has 13 inches…}. */
    public String message() {
        StringBuilder message = new StringBuilder(grid.place(file, row, column));
        if (!place.isEmpty()) {
            message.append(", ").append(place);
        }
        message.append(": ");
        message.append(grid.columnBehind(column));
        if (!found.isEmpty()) {
            message.append(found).append(' ');
        }
        return HarmlessText.of(message.append(reason).toString());
    }

    @Override
    public String toString() {
        return message();
    }
}
