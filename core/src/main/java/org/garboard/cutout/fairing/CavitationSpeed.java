package org.garboard.cutout.fairing;

import org.garboard.flow.cavitation.Inception;
import org.garboard.flow.cavitation.Suction;
import org.garboard.flow.cavitation.Suction.Coefficient;
import org.garboard.units.Angle;

/**
 * Speed of the water at which it begins to boil on the block, its nose rounded as {@link NoseRound} tells and its bedding
 * faired. A square or proud edge boils sooner, no one knows when.
 *
 * @param bulk as half an ellipsoid of its length, width and height [m/s]
 * @param sides as an upright cylinder of its planform, without end, which no real block is [m/s]
 * @param nose as an edge across the flow, without end, which no real nose is [m/s]
 */
public record CavitationSpeed(double bulk, double sides, double nose) {

    /** Of a block, its face at a depth of still water. */
    public static CavitationSpeed of(FairingBlock block, Inception water) {
        Suction bulk = new Suction.FairingNose(block.length(), block.width(), block.high(), Angle.ofRadians(0));
        return new CavitationSpeed(speed(bulk, water), speed(block.planform().suction(block.length(), block.width()), water),
            speed(block.nose().suction(), water));
    }

    private static double speed(Suction shape, Inception water) {
        // all three shapes are bounded ones: Suction.Answer is Unbounded for sharp edges only
        return water.speed(((Coefficient) shape.answer()).least());
    }

    /** The least of them [m/s]: below it nothing boils. */
    public double governing() {
        return Math.min(nose, Math.min(bulk, sides));
    }
}
