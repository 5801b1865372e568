package org.garboard.siting;

import java.util.Optional;
import org.garboard.craft.LaidFeature;
import org.garboard.mount.Bed;

/** A bed that can be moved from place to place and measured again, so that a search needs no object per place. */
interface MeasuredBed extends Bed {

    /** Goes to the starboard place (x, y) [m]: until the footprint is laid there, every figure but x and y is void. */
    void moveTo(double x, double y);

    /** Lays the footprint on the skin there. False, and every figure but x and y void, where it leaves the skin. */
    boolean lay();

    /** Both. */
    default boolean measure(double x, double y) {
        moveTo(x, y);
        return lay();
    }

    /** What it is laid on. */
    Ground ground();

    /** The rectangle round what it covers in plan where it was laid last, x and y of each corner; the array is its own. */
    double[] plan();

    /** Finds the nearest strake or fitting. */
    Obstacles.Nearest nearest();

    @Override
    default double roomToFeature() {
        nearest().seek(plan());
        return nearest().gap();
    }

    /** The strake or fitting that is nearest to the place last measured. */
    default Optional<LaidFeature> nearestFeature() {
        nearest().seek(plan());
        return nearest().feature();
    }

    @Override
    default double aheadOfPropellers() {
        return ground().obstacles().aheadOfPropellers(plan());
    }

    @Override
    default double immersion() {
        return ground().draught() - highest();
    }
}
