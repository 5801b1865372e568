package org.garboard.findingsfile;

/**
 * Something in a file of findings that has to be put right.
 *
 * @param file the file's name as the caller gave it
 * @param row line of the file, the first is 1; 0 if it concerns the whole file
 * @param column place in the line, the first is 1; 0 if it concerns the whole line
 * @param words what stands there, what was expected, what would work
 */
public record FindingsFault(String file, int row, int column, String words) {

    /** One line: {@code findings.csv:4: column 3, Girth: "12 parsecs" has the unit …}. */
    public String message() {
        return file + (row > 0 ? ":" + row : "") + ": " + (column > 0 ? "column " + column + ", " : "") + words;
    }
}
