package org.garboard.cutout.fairing;

import java.util.OptionalDouble;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.units.Angle;

/**
 * What is asked of a fairing block. Lengths [m].
 *
 * @param planform its outline
 * @param slenderness length to width
 * @param height of the face below the skin at the body's middle, square to the face; by default the least that holds
 *     the body and the low side
 * @param trailingEdgeLower how far the face's after edge is dropped from the run of the bottom, 0 to 2 degrees
 * @param toe of the long axis in the face's plane, its after end towards starboard
 * @param throughHull skin, bedding, inner block, chord error
 */
public record FairingWish(Planform planform, double slenderness, OptionalDouble height, Angle trailingEdgeLower,
                          Angle toe, ThroughHullWish throughHull) {
    /** Our choice: a nose round enough to make, and no more suction than that of a ball. */
    public static final double SLENDERNESS = 3.5;
    /** Our choice: half way between along the flow and the most that is allowed. */
    public static final double TRAILING_EDGE_LOWER_DEG = 1;

    /** The same through another skin. */
    public FairingWish through(ThroughHullWish other) {
        return new FairingWish(planform, slenderness, height, trailingEdgeLower, toe, other);
    }

    /** The defaults. */
    public static FairingWish of(ThroughHullWish throughHull) {
        return new FairingWish(Planform.NACA_00XX, SLENDERNESS, OptionalDouble.empty(),
            Angle.ofDegrees(TRAILING_EDGE_LOWER_DEG), Angle.ofDegrees(0), throughHull);
    }
}
