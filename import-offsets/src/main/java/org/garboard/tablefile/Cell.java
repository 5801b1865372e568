package org.garboard.tablefile;

import java.util.regex.Pattern;

/**
 * One cell of the file.
 *
 * @param row line of the file, the first is 1
 * @param column place in the line, the first is 1
 * @param text what stands there, without blanks around it
 */
record Cell(int row, int column, String text) {
    private static final Pattern DASHES = Pattern.compile("[-\u2010\u2011\u2012\u2013\u2014\u2015\u2212]{1,3}");

    private static final int MOST_QUOTED = 80;

    /** Nothing stands there. */
    boolean isEmpty() {
        return text.isEmpty();
    }

    /** Nothing, or a dash: the line does not cross the station. */
    boolean isBlank() {
        return text.isEmpty() || DASHES.matcher(text).matches();
    }

    /** For messages; of a long text its beginning. */
    String quoted() {
        return "\"" + (text.length() > MOST_QUOTED ? text.substring(0, MOST_QUOTED) + "…" : text) + "\"";
    }
}
