package org.garboard.acoustics.beam;

import java.util.Optional;
import org.garboard.units.Angle;
import org.hipparchus.special.BesselJ;

/**
 * A round element.
 *
 * @param diameter [m]
 * @param wavelength in the water [m]
 * @see "L. E. Kinsler, A. R. Frey, A. B. Coppens, J. V. Sanders, Fundamentals of Acoustics, the circular piston: D = 2 J1(v)/v,
 *     v = pi (d/lambda) sin theta; from memory, its zeros confirmed by the tables of J1 in Abramowitz and Stegun"
 */
public record Disc(double diameter, double wavelength) implements Element {
    /** Where 2 J1(v)/v falls to the root of a half. */
    static final double HALF_POWER = 1.616339948310703;
    /** First zero of J1. */
    static final double FIRST_NULL = 3.831705970207512;
    /** First zero of J2: there J1(v)/v turns back. */
    static final double SIDE_LOBE = 5.135622301840683;

    public Disc {
        Sines.requirePositive("diameter of the element", diameter);
        Sines.requirePositive("wavelength", wavelength);
    }

    /** The disc that has this full half-power width; a maker tells the width, seldom the disc. */
    public static Disc ofHalfPowerWidth(Angle width, double wavelength) {
        return new Disc(wavelength * HALF_POWER / (Math.PI * Sines.ofHalf(width)), wavelength);
    }

    @Override
    public double response(Angle foreAndAft, Angle athwart) {
        double v = Math.PI * diameter / wavelength * Sines.offAxis(foreAndAft, athwart);
        return v < 1e-8 ? 1 : 2 * BesselJ.value(1, v) / v;
    }

    @Override
    public Optional<Angle> halfPowerWidth(Plane plane) {
        return Sines.angle(HALF_POWER * wavelength / (Math.PI * diameter)).map(half -> Angle.ofRadians(2 * half.radians()));
    }

    @Override
    public Optional<Angle> firstNull(Plane plane) {
        return Sines.angle(FIRST_NULL * wavelength / (Math.PI * diameter));
    }

    @Override
    public double sideLobeDecibels() {
        return 20 * Math.log10(Math.abs(2 * BesselJ.value(1, SIDE_LOBE) / SIDE_LOBE));
    }

    @Override
    public double nearField() {
        return Math.PI * diameter * diameter / (4 * wavelength);
    }

    /** Distance of the last maximum on the axis [m]; 0 where the disc is too small to have one. */
    public double lastAxialMaximum() {
        return Math.max(0, diameter * diameter / (4 * wavelength) - wavelength / 4);
    }

    @Override
    public double directivityIndex() {
        return 20 * Math.log10(Math.PI * diameter / wavelength);
    }
}
