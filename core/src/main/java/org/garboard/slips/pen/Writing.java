package org.garboard.slips.pen;

import org.garboard.units.LengthUnit;

/** How a table writes its lengths, which says what a slip of the pen can do to one. */
public sealed interface Writing permits Writing.FeetInchesEighths, Writing.Decimals {

    /** As in 2-3-4; a foot, an inch, some eighths may be wrong, or neighbouring digits swapped. */
    record FeetInchesEighths() implements Writing {
    }

    /**
     * Decimals of a unit: neighbouring digits may be swapped or the point moved; of feet and inches, a foot or
     * an inch may be wrong as well.
     */
    record Decimals(LengthUnit unit) implements Writing {
    }
}
