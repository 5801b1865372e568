package org.garboard.drawing.sheets;

import org.garboard.hull.Hull;
import org.garboard.offsets.HullOffsets;
import org.garboard.offsets.Station;

/** The two places that lengths along the boat are told from: the origin of what she is drawn from, and its after end. */
public record Datums(HullOffsets table, Hull hull) {

    /** The datum aft: the transom's bottom corner where the table gives the transom, otherwise where the table ends. */
    public String afterEnd() {
        Station last = table.stations().get(table.stations().size() - 1);
        return table.ends().transom().isPresent() ? "bottom corner of the transom"
                : "after end of " + table.word() + " (station " + last.name() + ")";
    }

    /** The datum forward. */
    public String forward() {
        return table.origin() + " of the " + table.word();
    }

    /** Distance of a place forward of the datum aft [m]. */
    public double fromAfterEnd(double x) {
        return hull.foot() - x;
    }
}
