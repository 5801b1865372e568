package org.garboard.mount;

import java.util.OptionalDouble;
import org.garboard.mount.pocket.Floor;
import org.garboard.mount.pocket.PocketMake;

/**
 * What the job asks of a keel pocket. Lengths [m].
 *
 * @param depth of the floor above the keel line at the site; by default such that the body's face
 *     lies level with the skin at its outer edges
 * @param gap bedding between body and wall, each side
 * @param rampRatio length of the fore and aft ramps to their height, 8 for 1:8; 0 for none
 * @param aside of its middle from the centreline, to starboard; port is negative, 0 for athwart the keel
 * @param make walls, blends, laminate, former
 */
public record PocketWish(OptionalDouble depth, double gap, double rampRatio, double aside, PocketMake make) {

    /** A pocket athwart the keel. */
    public PocketWish(OptionalDouble depth, double gap, double rampRatio, PocketMake make) {
        this(depth, gap, rampRatio, 0, make);
    }

    /** A wish of which no more is told. */
    public PocketWish(OptionalDouble depth, double gap, double rampRatio) {
        this(depth, gap, rampRatio, PocketMake.USUAL);
    }

    /** The same with its middle elsewhere [m to starboard]. */
    public PocketWish aside(double other) {
        return new PocketWish(depth, gap, rampRatio, other, make);
    }

    /** Whether its floor leans with the skin beside the keel. */
    public boolean leans() {
        return aside != 0 && make.floor().lies() == Floor.Lies.SQUARE_TO_SKIN;
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
