package org.garboard.offsets;

import java.util.List;
import java.util.stream.IntStream;

/**
 * The strip of skin between two neighbouring named lines.
 *
 * @param lower name of the line nearer the keel
 * @param upper name of the line nearer the sheer
 */
public record PanelName(String lower, String upper) {

    /** The panels of a table from the keel outward, as far as it has the lines. */
    public static List<PanelName> of(OffsetTable table) {
        List<NamedLine> lines = NamedLine.fromKeelOutward(table);
        return IntStream.range(0, Math.max(0, lines.size() - 1))
            .mapToObj(panel -> new PanelName(lines.get(panel).name(), lines.get(panel + 1).name()))
            .toList();
    }

    /** "Keel to Chine". */
    public String words() {
        return lower + " to " + upper;
    }
}
