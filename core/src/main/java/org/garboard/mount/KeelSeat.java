package org.garboard.mount;

import java.util.function.DoubleBinaryOperator;

/**
 * The V that a footprint athwart the keel straddles: the chord of the keel line under it, laid through
 * the keel line at its middle, and how far the skin rises from there to the footprint's outer edges.
 *
 * @param slope of the chord fore and aft, dz/dx, positive rising aft
 * @param rise of the skin at the outer edges above the line, square to it, the largest over the length [m]
 * @param highest skin at the outer edges [m above base]
 */
public record KeelSeat(double slope, double rise, double highest) {

    /**
     * The seat of a footprint centred on the keel at x.
     *
     * @param skin height of the skin at x, y [m], NaN off the skin, as {@code hull::height}
     * @param samples along the footprint, two at least
     */
    public static KeelSeat under(DoubleBinaryOperator skin, double x, Footprint footprint, int samples) {
        double half = footprint.length() / 2;
        double slope = (skin.applyAsDouble(x + half, 0) - skin.applyAsDouble(x - half, 0)) / footprint.length();
        double cosine = 1 / Math.sqrt(1 + slope * slope);
        double keel = skin.applyAsDouble(x, 0);
        double rise = Double.NEGATIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < samples; k++) {
            double along = half * cosine * (2.0 * k / (samples - 1) - 1);
            double z = skin.applyAsDouble(x + along, footprint.width() / 2);
            rise = Math.max(rise, (z - keel - slope * along) * cosine);
            highest = Math.max(highest, z);
        }
        return new KeelSeat(slope, rise, highest);
    }

    /** False where keel line or outer edges leave the skin. */
    public boolean onSkin() {
        return !Double.isNaN(rise);
    }
}
