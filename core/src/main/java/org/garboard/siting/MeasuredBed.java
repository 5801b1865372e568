package org.garboard.siting;

import java.util.Optional;
import org.garboard.craft.LaidFeature;
import org.garboard.mount.Bed;

/** A bed that can be moved from place to place and measured again, so that a search needs no object per place. */
interface MeasuredBed extends Bed {

    /** Measures the starboard place (x, y) [m]. False, and every figure void, where the footprint leaves the skin. */
    boolean measure(double x, double y);

    /** The strake or fitting that is nearest to the place last measured. */
    Optional<LaidFeature> nearestFeature();
}
