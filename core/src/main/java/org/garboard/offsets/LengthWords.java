package org.garboard.offsets;

import org.garboard.units.FeetInches;
import org.garboard.units.FixedDecimal;
import org.garboard.units.LengthUnit;

/** Says lengths the way the table is written: in feet-inches-eighths, or in millimetres. */
public final class LengthWords {
    private static final double SIXTEENTH = LengthUnit.INCH.metres() / 16;

    private final boolean eighths;
    private final int decimals;

    /** @param leastCount smallest step of the readings [m] */
    public LengthWords(double leastCount) {
        double sixteenths = leastCount / SIXTEENTH;
        eighths = Math.abs(sixteenths - 1) < 1e-9 || Math.abs(sixteenths - 2) < 1e-9;
        decimals = leastCount < LengthUnit.MILLIMETRE.metres() - 1e-9 ? 1 : 0;
    }

    /** A length of so many metres. */
    public String say(double metres) {
        return eighths
            ? FeetInches.dashed(metres)
            : FixedDecimal.format(metres / LengthUnit.MILLIMETRE.metres(), decimals) + " mm";
    }

    /** A place of a section. */
    public String say(SectionPoint point) {
        return "half-breadth " + say(point.y()) + ", height " + say(point.z());
    }
}
