package org.garboard.tablefile;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The hulls that a table's words name. A table holds one hull, measured from that hull's own centreline; of a catamaran one of the
 * pair. What a second one's offsets would do to the first cannot be seen from the numbers, so it is seen from the words.
 */
final class HullsNamed {
    private static final Pattern HULL = Pattern.compile("\\b(port|starboard|left|right|main|centre|center|side|float|weather|lee|other)[ -]hull\\b|\\bhull (no\\.? ?)?[1-9ab]\\b",
        Pattern.CASE_INSENSITIVE);

    private HullsNamed() {
    }

    /** Refuses a second hull where it is first named. */
    static void requireOne(List<GridRow> rows, Problems problems) {
        Optional<String> first = Optional.empty();
        for (GridRow row : rows) {
            for (Cell cell : row.cells()) {
                Matcher named = HULL.matcher(cell.text());
                while (named.find()) {
                    String hull = named.group().toLowerCase(Locale.ROOT);
                    if (first.isPresent() && !first.get().equals(hull)) {
                        problems.inCell(cell, "", "", "names a second hull beside \"" + first.get() + "\": a table holds one hull, measured from its own"
                            + " centreline; give each of a pair a file of its own");
                        return;
                    }
                    first = Optional.of(hull);
                }
            }
        }
    }
}
