package org.garboard.acoustics.beam;

import java.util.Optional;
import org.garboard.units.Angle;

/**
 * A rectangular element, or a row of elements that work as one.
 *
 * @param length fore and aft [m]
 * @param width athwartships [m]
 * @param wavelength in the water [m]
 * @see "L. E. Kinsler, A. R. Frey, A. B. Coppens, J. V. Sanders, Fundamentals of Acoustics, the line source: D = sin(v)/v,
 *     v = pi (L/lambda) sin theta; from memory, confirmed by its zeros. A rectangle is the product of two lines"
 */
public record Rectangle(double length, double width, double wavelength) implements Element {
    /** Where sin(v)/v falls to the root of a half. */
    static final double HALF_POWER = 1.391557378251510;
    /** First root of tan v = v: there sin(v)/v turns back. */
    static final double SIDE_LOBE = 4.493409457909064;

    public Rectangle {
        Sines.requirePositive("length of the element", length);
        Sines.requirePositive("width of the element", width);
        Sines.requirePositive("wavelength", wavelength);
    }

    /** The rectangle that has these full half-power widths. */
    public static Rectangle ofHalfPowerWidths(Angle foreAndAft, Angle athwart, double wavelength) {
        double scale = wavelength * HALF_POWER / Math.PI;
        return new Rectangle(scale / Sines.ofHalf(foreAndAft), scale / Sines.ofHalf(athwart), wavelength);
    }

    /** For a direction tilted in both planes each side answers to the sine along itself. */
    @Override
    public double response(Angle foreAndAft, Angle athwart) {
        double down = 1 / Math.sqrt(1 + square(Math.tan(foreAndAft.radians())) + square(Math.tan(athwart.radians())));
        return line(length, Math.tan(foreAndAft.radians()) * down) * line(width, Math.tan(athwart.radians()) * down);
    }

    @Override
    public Optional<Angle> halfPowerWidth(Plane plane) {
        return Sines.angle(HALF_POWER * wavelength / (Math.PI * side(plane))).map(half -> Angle.ofRadians(2 * half.radians()));
    }

    @Override
    public Optional<Angle> firstNull(Plane plane) {
        return Sines.angle(wavelength / side(plane));
    }

    @Override
    public double sideLobeDecibels() {
        return 20 * Math.log10(Math.abs(Math.sin(SIDE_LOBE) / SIDE_LOBE));
    }

    @Override
    public double nearField() {
        return length * width / wavelength;
    }

    @Override
    public double directivityIndex() {
        return 10 * Math.log10(4 * Math.PI * length * width / (wavelength * wavelength));
    }

    private double side(Plane plane) {
        return plane == Plane.FORE_AND_AFT ? length : width;
    }

    private double line(double side, double sine) {
        double v = Math.PI * side / wavelength * sine;
        return Math.abs(v) < 1e-8 ? 1 : Math.sin(v) / v;
    }

    private static double square(double value) {
        return value * value;
    }
}
