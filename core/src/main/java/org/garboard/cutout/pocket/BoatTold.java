package org.garboard.cutout.pocket;

import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.inside.LaidInside;
import org.garboard.skin.HullSkin;

/**
 * What is told of the boat that a pocket goes into. What is missing is not known.
 *
 * @param fastestKnots her top speed
 * @param skin what the bottom is made of
 * @param inside what stands behind it
 */
public record BoatTold(OptionalDouble fastestKnots, Optional<HullSkin> skin, Optional<LaidInside> inside) {
    /** Only her table. */
    public static final BoatTold NOTHING = new BoatTold(OptionalDouble.empty(), Optional.empty(), Optional.empty());
}
