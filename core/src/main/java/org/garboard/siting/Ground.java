package org.garboard.siting;

import java.util.function.DoubleBinaryOperator;

/**
 * What a place is measured on: the skin, the lines on it, and the water it floats in.
 *
 * @param skin height of the outside of the skin [m] at x, y; NaN off the skin; port mirrors starboard
 * @param lines that bound and divide the bottom
 * @param obstacles the strakes and fittings on it
 * @param draught height of the waterline above base at rest [m]
 */
record Ground(DoubleBinaryOperator skin, BottomLines lines, Obstacles obstacles, double draught) {

    /** The same bottom read from another skin. */
    Ground on(DoubleBinaryOperator otherSkin) {
        return new Ground(otherSkin, lines, obstacles, draught);
    }
}
