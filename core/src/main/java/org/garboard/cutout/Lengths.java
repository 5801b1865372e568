package org.garboard.cutout;

import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/** Lengths and angles as refusals say them. */
public final class Lengths {
    private Lengths() {
    }

    /** "12.5 mm". */
    public static String mm(double metres) {
        return FixedDecimal.format(metres * 1000, 1) + " mm";
    }

    /** The next whole millimetre up, in words: "13 mm". */
    public static String mmUp(double metres) {
        return FixedDecimal.format(Math.ceil(metres * 1000 - 1e-6), 0) + " mm";
    }

    /** The next whole millimetre down, in words. */
    public static String mmDown(double metres) {
        return FixedDecimal.format(Math.floor(metres * 1000 + 1e-6), 0) + " mm";
    }

    /** "18.3 deg". */
    public static String deg(Angle angle) {
        return FixedDecimal.format(angle.degrees(), 1) + " deg";
    }
}
