package org.garboard.cutout.fairing;

import org.garboard.flow.cavitation.Inception;
import org.garboard.flow.cavitation.Suction;
import org.garboard.flow.cavitation.Suction.Coefficient;
import org.garboard.units.Angle;

/**
 * Speed of the water at which it begins to boil on the block's own form; edges are not in it. A fair block is clear
 * of it at boat speeds; a square or proud edge is not: round the face's edge and fair the bedding.
 *
 * @param bulk as half an ellipsoid of its length, width and height [m/s]
 * @param sides as an upright cylinder of its planform, without end, which no real block is [m/s]; the lesser of the two
 */
public record CavitationSpeed(double bulk, double sides) {

    /** Of a block, its face at a depth of still water. */
    public static CavitationSpeed of(FairingBlock block, Inception water) {
        Suction bulk = new Suction.FairingNose(block.length(), block.width(), block.high(), Angle.ofRadians(0));
        return new CavitationSpeed(speed(bulk, water), speed(block.planform().suction(block.length(), block.width()), water));
    }

    private static double speed(Suction shape, Inception water) {
        // both shapes are bounded ones: Suction.Answer is Unbounded for sharp edges only
        return water.speed(((Coefficient) shape.answer()).least());
    }

    /** The speed that governs [m/s]. */
    public double governing() {
        return Math.min(bulk, sides);
    }
}
