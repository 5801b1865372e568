package org.garboard.mount;

import java.util.function.DoubleBinaryOperator;
import org.garboard.geometry.StraightFit;

/**
 * The V that a footprint athwart the keel straddles: the keel line under it as a straight, and how
 * far the skin rises from that straight to the footprint's outer edges.
 *
 * @param keel the best straight through the keel line over the footprint's length
 * @param rise of the skin at the outer edges above the straight, square to it, the largest over the
 *     length [m]
 * @param highest skin at the outer edges [m above base]
 */
public record KeelSeat(StraightFit keel, double rise, double highest) {

    /**
     * The seat of a footprint centred on the keel at x.
     *
     * @param skin height of the skin at x, y [m], NaN off the skin, as {@code hull::height}
     * @param samples along the footprint
     */
    public static KeelSeat under(DoubleBinaryOperator skin, double x, Footprint footprint, int samples) {
        double half = footprint.length() / 2;
        double lift = (skin.applyAsDouble(x + half, 0) - skin.applyAsDouble(x - half, 0)) / footprint.length();
        double halfInPlan = half / Math.sqrt(1 + lift * lift);
        StraightFit keel = StraightFit.over(at -> skin.applyAsDouble(at, 0), x, halfInPlan, samples);
        double rise = Double.NEGATIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < samples; k++) {
            double at = x + halfInPlan * (2.0 * k / (samples - 1) - 1);
            double z = skin.applyAsDouble(at, footprint.width() / 2);
            rise = Math.max(rise, z - keel.z(at));
            highest = Math.max(highest, z);
        }
        return new KeelSeat(keel, rise / Math.sqrt(1 + keel.slope() * keel.slope()), highest);
    }

    /** False where keel or outer edges leave the skin. */
    public boolean onSkin() {
        return !Double.isNaN(rise) && !Double.isNaN(keel.z());
    }
}
