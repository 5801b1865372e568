package org.garboard.offsets;

import org.garboard.units.FeetInches;
import org.garboard.units.FixedDecimal;
import org.garboard.units.LengthUnit;

/** Says lengths the way the table is written: in feet-inches-eighths, or in millimetres. */
final class LengthWords {
    private static final double SIXTEENTH = LengthUnit.INCH.metres() / 16;

    private final boolean eighths;
    private final int decimals;

    LengthWords(OffsetTable table) {
        double sixteenths = table.leastCount() / SIXTEENTH;
        eighths = Math.abs(sixteenths - 1) < 1e-9 || Math.abs(sixteenths - 2) < 1e-9;
        decimals = table.leastCount() < LengthUnit.MILLIMETRE.metres() - 1e-9 ? 1 : 0;
    }

    String say(double metres) {
        return eighths
            ? FeetInches.dashed(metres)
            : FixedDecimal.format(metres / LengthUnit.MILLIMETRE.metres(), decimals) + " mm";
    }

    String say(SectionPoint point) {
        return "half-breadth " + say(point.y()) + ", height " + say(point.z());
    }
}
