package org.garboard.hull;

import org.garboard.offsets.SectionPoint;
import org.garboard.offsets.Station;
import org.garboard.units.FixedDecimal;

/** No fault is seen in the table by itself, but at some place no surface that can be relied on comes of it. */
public final class HullNotDrawn extends RuntimeException {
    private static final long serialVersionUID = 1;

    private HullNotDrawn(String message) {
        super(message);
    }

    /**
     * The skin, at its thickness, has no outside.
     *
     * @param x of the place [m]
     * @param reason what is in the way, and what would help
     */
    static HullNotDrawn outside(double x, String reason) {
        return new HullNotDrawn("the outside of the skin cannot be drawn at x = " + FixedDecimal.format(x, 3) + " m: "
                + reason);
    }

    /**
     * The table's stations draw a step or a transom that cannot be.
     *
     * @param reason what is wrong, and what would help
     */
    static HullNotDrawn end(String reason) {
        return new HullNotDrawn(reason);
    }

    /**
     * The surface strays from what the table reads.
     *
     * @param off how far [m]
     * @param within how far it may [m]
     */
    static HullNotDrawn offReading(Station station, SectionPoint point, double off, double within) {
        return new HullNotDrawn("no surface was found that keeps to the table: at station " + station.name() + " (x = "
                + FixedDecimal.format(station.x(), 3) + " m), half-breadth "
                + FixedDecimal.format(point.y(), 4) + " m and height " + FixedDecimal.format(point.z(), 4) + " m, it comes out " + FixedDecimal.format(off * 1e3, 3)
                + " mm off, where at most " + FixedDecimal.format(within * 1e3, 3)
                + " mm is allowed; compare that station with its neighbours, and put more stations where the shape"
                + " changes fast");
    }
}
