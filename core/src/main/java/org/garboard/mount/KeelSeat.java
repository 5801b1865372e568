package org.garboard.mount;

import java.util.function.DoubleBinaryOperator;
import org.garboard.mount.pocket.Floor;

/**
 * The skin that the floor of a pocket lies over: the chord of the skin fore and aft under its middle, and how far the
 * skin rises from there to the footprint's sides; athwart the keel a V.
 *
 * @param slope of the chord fore and aft, dz/dx, positive rising aft
 * @param athwart slope of the skin across at the middle, dz/dy; 0 on the keel line
 * @param rise of the skin at the sides above the floor's plane through the middle, square to it, the largest over the length [m]
 * @param highest skin at the sides [m above base]
 */
public record KeelSeat(double slope, double athwart, double rise, double highest) {
    /** To both sides of the middle the skin's slope across is read [m]; our choice, half a cell of the search's grid. */
    private static final double BESIDE = 0.005;

    /** The seat of a footprint centred on the keel at x, its floor level athwartships. */
    public static KeelSeat under(DoubleBinaryOperator skin, double x, Footprint footprint, int samples) {
        return under(skin, x, 0, Floor.Lies.LEVEL_ATHWART, footprint, samples);
    }

    /**
     * The seat of a footprint.
     *
     * @param skin height of the skin at x, y [m], NaN off the skin, as {@code hull::height}
     * @param y of its middle, to starboard as if the boat were alike on both sides [m]
     * @param lies how the floor over it lies beside the keel; on the keel line it is level
     * @param samples along the footprint, two at least
     */
    public static KeelSeat under(DoubleBinaryOperator skin, double x, double y, Floor.Lies lies, Footprint footprint, int samples) {
        double half = footprint.length() / 2;
        double slope = (skin.applyAsDouble(x + half, y) - skin.applyAsDouble(x - half, y)) / footprint.length();
        double athwart = y == 0 ? 0 : (skin.applyAsDouble(x, y + BESIDE) - skin.applyAsDouble(x, y - BESIDE)) / (2 * BESIDE);
        double leaning = lies == Floor.Lies.SQUARE_TO_SKIN ? athwart : 0;
        double cosine = 1 / Math.sqrt(1 + slope * slope + leaning * leaning);
        double out = footprint.width() / 2 / Math.sqrt(1 + leaning * leaning);
        double middle = skin.applyAsDouble(x, y);
        double rise = Double.NEGATIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        for (int k = 0; k < samples; k++) {
            double along = half * (2.0 * k / (samples - 1) - 1) / Math.sqrt(1 + slope * slope);
            for (int side = y == 0 ? 1 : -1; side <= 1; side += 2) {
                double z = skin.applyAsDouble(x + along, y + side * out);
                rise = Math.max(rise, (z - middle - slope * along - leaning * side * out) * cosine);
                highest = Math.max(highest, z);
            }
        }
        return new KeelSeat(slope, athwart, rise, highest);
    }

    /** False where its middle or its sides leave the skin. */
    public boolean onSkin() {
        return !Double.isNaN(rise);
    }
}
