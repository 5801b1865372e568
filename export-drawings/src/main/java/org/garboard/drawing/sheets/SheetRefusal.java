package org.garboard.drawing.sheets;

/**
 * A sheet that could not be drawn so that it can be read.
 *
 * @param sheet the sheet, "sheet 4 (pocket)"
 * @param reason with the figure that fails
 * @param remedy what would work
 */
public record SheetRefusal(String sheet, String reason, String remedy) {

    /** One line for the command line and the report. */
    public String message() {
        return sheet + ": " + reason + "; " + remedy;
    }
}
