package org.garboard.flow.attitude;

import java.util.Optional;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.units.Angle;

/**
 * Finds how high the level water stands at a trim for the true bottom to be wet over a mean length: the one with which the
 * method carries her, as it knows a bottom's wetted area by that length alone.
 */
final class CarryingWater {
    private static final int TURNS = 60;
    /** Of the mean length: a millimetre in five metres. */
    private static final double CLOSE = 2e-4;
    /** Of the mean length: beside a box keel it jumps a little where a wet piece of the section is lost, and nothing between can be met. */
    private static final double NEAR = 1e-3;
    /** Of the height, the first step where the water at the first guess leaves no line on the bottom. */
    private static final double STRIDE = 0.05;

    private final Hull hull;
    private final double end;
    private final double keel;

    /**
     * @param end x of the after end of the bottom [m]
     * @param keel height of the V's keel there [m]
     */
    CarryingWater(Hull hull, double end, double keel) {
        this.hull = hull;
        this.end = end;
        this.keel = keel;
    }

    /**
     * The line on the bottom, and the water.
     *
     * @param water undisturbed
     * @param line that it meets the bottom in
     * @param plan wetted
     */
    record Laid(WaterSurface water, StagnationLine line, WettedPlan plan) {
    }

    /**
     * Sought by rough sums, accepted by the line itself. Empty where at no height the water leaves keel and chine within the hull so.
     *
     * @param trim of the base line
     * @param slope by which the wetted keel grows as the water rises
     * @param guess of its height over the keel [m]
     */
    Optional<Laid> wetting(double mean, Angle trim, double slope, double guess) {
        double low = 0;
        double high = Double.POSITIVE_INFINITY;
        double height = guess;
        double before = Double.NaN;
        double missBefore = Double.NaN;
        double nearest = guess;
        double least = Double.POSITIVE_INFINITY;
        double off = 0;
        for (int turn = 0; turn < TURNS && high - low > 0; turn++) {
            LaidLine laid = new LaidLine(hull, new WaterSurface(keel + height, end, trim));
            double found = laid.roughMean(end);
            double next = Double.NaN;
            double miss = found + off - mean;
            if (Double.isNaN(found)) {
                miss = laid.isDry(end) ? -1 : 1;
            } else {
                if (Math.abs(miss) <= CLOSE * mean) {
                    Optional<Laid> careful = laid(height, trim);
                    double exact = careful.map(each -> each.plan().mean()).orElse(found);
                    if (careful.isPresent() && Math.abs(exact - mean) <= CLOSE * mean) {
                        return careful;
                    }
                    // from here on the rough sums are righted by what they were off, and the bracket begun anew
                    missBefore += exact - found - off;
                    off = exact - found;
                    miss = exact - mean;
                    low = 0;
                    high = Double.POSITIVE_INFINITY;
                }
                if (Math.abs(miss) < least) {
                    least = Math.abs(miss);
                    nearest = height;
                }
                next = Double.isNaN(before) ? height - miss * slope
                    : height - miss * (height - before) / (miss - missBefore);
                before = height;
                missBefore = miss;
            }
            if (miss > 0) {
                high = height;
            } else {
                low = height;
            }
            height = next > low && next < high ? next : Double.isInfinite(high) ? height * (1 + STRIDE) : 0.5 * (low + high);
        }
        return laid(nearest, trim).filter(each -> Math.abs(each.plan().mean() - mean) <= NEAR * mean);
    }

    private Optional<Laid> laid(double height, Angle trim) {
        WaterSurface water = new WaterSurface(keel + height, end, trim);
        return new LaidLine(hull, water).line(end).map(line -> new Laid(water, line, WettedPlan.of(line, end)));
    }
}
