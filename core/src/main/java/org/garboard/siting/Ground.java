package org.garboard.siting;

import java.util.function.DoubleBinaryOperator;
import org.garboard.craft.Sides;

/**
 * What a place is measured on: the skin, the lines on it, and the water it floats in.
 *
 * @param skin height of the outside of the skin [m] at x, y; NaN off the skin; port mirrors starboard
 * @param lines that bound and divide the bottom
 * @param obstacles the strakes and fittings on it
 * @param draught height of the waterline above base at rest [m]
 * @param side of the boat that is looked at, as if to starboard; BOTH where they are alike, or across the keel
 */
record Ground(DoubleBinaryOperator skin, BottomLines lines, Obstacles obstacles, double draught, Sides side) {

    /** Of a bottom that is alike on both sides. */
    Ground(DoubleBinaryOperator skin, BottomLines lines, Obstacles obstacles, double draught) {
        this(skin, lines, obstacles, draught, Sides.BOTH);
    }

    /** The side of a place. */
    static Sides sideOf(double y) {
        return y == 0 ? Sides.BOTH : y > 0 ? Sides.STARBOARD : Sides.PORT;
    }

    /** y to starboard of a place that is looked at as if to starboard [m]. */
    double signed(double y) {
        return side == Sides.PORT ? -y : y;
    }

    /** The same bottom read from another skin. */
    Ground on(DoubleBinaryOperator otherSkin) {
        return new Ground(otherSkin, lines, obstacles, draught, side);
    }
}
