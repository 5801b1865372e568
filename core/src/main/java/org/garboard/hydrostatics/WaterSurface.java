package org.garboard.hydrostatics;

import org.garboard.units.Angle;

/**
 * The surface of still water as the hull lies in it, upright.
 *
 * @param height above base at one place of the length [m]
 * @param about x of that place, round which a trimmed hull turns [m]
 * @param trim of the hull, positive bow-up, less than a right angle either way
 */
public record WaterSurface(double height, double about, Angle trim) {
    public WaterSurface {
        if (!Double.isFinite(height) || !Double.isFinite(about) || !(Math.abs(trim.radians()) < Math.PI / 2)) {
            throw new IllegalArgumentException("no water surface: height " + height + " m at x = " + about
                + " m, trim " + trim.degrees() + " deg");
        }
    }

    /** Level with the base line. */
    public static WaterSurface level(double height) {
        return new WaterSurface(height, 0, Angle.ofDegrees(0));
    }

    /** Height above base at x [m]: with the bow up the water stands higher aft. */
    public double at(double x) {
        return height + (x - about) * slope();
    }

    /** Rise of the water above base for each metre aft. */
    public double slope() {
        return Math.tan(trim.radians());
    }
}
