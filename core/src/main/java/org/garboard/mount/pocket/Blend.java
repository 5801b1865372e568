package org.garboard.mount.pocket;

import java.util.Optional;
import org.garboard.units.Angle;

/**
 * How the face's surroundings run out into the skin to the sides; fore and aft the ramps do.
 *
 * @param sideRatio length to height, 0 for none
 * @param steepest slope against the skin that ramps and blends may have; goes before the ratios where it asks for more length
 */
public record Blend(double sideRatio, Optional<Angle> steepest) {
    /** Our choice: water crosses the sides at a small angle, so they may be shorter than the ramps. */
    public static final Blend USUAL = new Blend(3, Optional.empty());
    /** Steepest slope of the curve t^3 (10 - 15 t + 6 t^2) to its mean: 30 t^2 (1 - t)^2 at t = 1/2. */
    public static final double PEAK = 1.875;

    /** Length to height of a ramp that is asked for with a ratio. */
    public double ratio(double asked) {
        return asked > 0 ? Math.max(asked, steepest.map(angle -> PEAK / Math.tan(angle.radians())).orElse(0.0)) : 0;
    }
}
