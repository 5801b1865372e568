package org.garboard.findingsfile;

import org.garboard.survey.PlaceFault;
import org.garboard.survey.SurveyFinding;

/**
 * A finding, and where in its file its place is told.
 *
 * @param along cell that tells how far along the boat
 * @param out cell that tells how far out, or the region
 * @param side cell that tells the side
 */
public record WrittenFinding(SurveyFinding finding, Told along, Told out, Told side) {

    /**
     * A cell.
     *
     * @param row line of the file, the first is 1
     * @param column place in the line, the first is 1; 0 where the file has no such column
     * @param heading of the column
     * @param text what stands there
     */
    record Told(int row, int column, String heading, String text) {

        FindingsFault fault(String file, String reason) {
            return new FindingsFault(file, row, column,
                (column > 0 ? heading + ": " + (text.isEmpty() ? "nothing stands there; it " : Quoted.of(text) + " ") : heading + " ") + reason);
        }
    }

    /** A fault of its place, told at its cell. */
    public FindingsFault fault(String file, PlaceFault fault) {
        return (switch (fault.part()) {
            case ALONG -> along;
            case OUT -> out;
            case SIDE -> side;
        }).fault(file, fault.reason());
    }
}
