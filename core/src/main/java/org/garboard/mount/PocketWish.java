package org.garboard.mount;

import java.util.OptionalDouble;
import org.garboard.mount.pocket.PocketMake;

/**
 * What the job asks of a keel pocket. Lengths [m].
 *
 * @param depth of the floor above the keel line at the site; by default such that the body's face
 *     lies level with the skin at its outer edges
 * @param gap bedding between body and wall, each side
 * @param rampRatio length of the fore and aft ramps to their height, 8 for 1:8; 0 for none
 * @param make walls, blends, laminate, former
 */
public record PocketWish(OptionalDouble depth, double gap, double rampRatio, PocketMake make) {

    /** A wish of which no more is told. */
    public PocketWish(OptionalDouble depth, double gap, double rampRatio) {
        this(depth, gap, rampRatio, PocketMake.USUAL);
    }

    /** Length to height of the ramps fore and aft. */
    public double endRatio() {
        return make.blend().ratio(rampRatio);
    }

    /** Length to height of the blends to the sides; none where there are no ramps. */
    public double sideRatio() {
        return rampRatio > 0 ? make.blend().ratio(make.blend().sideRatio()) : 0;
    }
}
