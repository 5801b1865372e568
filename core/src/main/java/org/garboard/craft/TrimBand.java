package org.garboard.craft;

import org.garboard.units.Angle;

/**
 * By how much she may run at another trim than is worked out, tabs and legs up or down.
 *
 * @param lower bow down from it, 0 or more
 * @param higher bow up from it, 0 or more
 */
public record TrimBand(Angle lower, Angle higher) {
    /** Common practice, no source. */
    public static final TrimBand USUAL = new TrimBand(Angle.ofDegrees(1.5), Angle.ofDegrees(1.5));
}
