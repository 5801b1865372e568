package org.garboard.marking;

import java.util.List;

/**
 * How one place is marked out.
 *
 * @param datum what its lengths along the boat start from
 * @param marks in the order in which they are made
 * @param lengths in the order in which they are taped
 */
public record MarkingOut(Datum datum, List<Mark> marks, List<MarkedLength> lengths) {
    /** What lengths along the boat start from. */
    public enum Datum {
        /** The bottom corner of the transom, which the table places. */
        TRANSOM,
        /** The edge of a step on the centreline. */
        STEP,
        /** The heel of the sternpost, where it is what the offsets are measured from. */
        HEEL,
        /** Where the table ends; nothing shows it on the boat. */
        END_OF_TABLE
    }

    public MarkingOut {
        marks = List.copyOf(marks);
        lengths = List.copyOf(lengths);
    }
}
