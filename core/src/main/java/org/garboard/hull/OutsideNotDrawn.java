package org.garboard.hull;

import org.garboard.units.FixedDecimal;

/** The table is sound, but at some place its skin, at its thickness, has no outside that can be drawn. */
public final class OutsideNotDrawn extends RuntimeException {
    private static final long serialVersionUID = 1;

    /**
     * @param x of the place [m]
     * @param reason what is in the way, and what would help
     */
    OutsideNotDrawn(double x, String reason) {
        super("the outside of the skin cannot be drawn at x = " + FixedDecimal.format(x, 3) + " m: " + reason);
    }
}
