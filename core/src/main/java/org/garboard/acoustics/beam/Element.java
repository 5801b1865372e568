package org.garboard.acoustics.beam;

import java.util.Optional;
import org.garboard.craft.SoundBeam;
import org.garboard.units.Angle;

/** The face of an element at one frequency: a disc, or a rectangle by its fore-and-aft and athwartships sides. */
public sealed interface Element permits Disc, Rectangle {

    /**
     * The element that has the beam a maker tells: a disc where both widths are the same.
     *
     * @param soundSpeed in the water [m/s]
     */
    static Element of(SoundBeam beam, double soundSpeed) {
        double wavelength = soundSpeed / beam.frequency();
        return beam.isRound() ? Disc.ofHalfPowerWidth(beam.athwart(), wavelength)
            : Rectangle.ofHalfPowerWidths(beam.foreAndAft(), beam.athwart(), wavelength);
    }

    /** Wavelength in the water [m]. */
    double wavelength();

    /** Response in a direction against that on the axis, -1 to 1: {@code foreAndAft} and {@code athwart} from the axis. */
    double response(Angle foreAndAft, Angle athwart);

    /** Full width between half-power directions; none where the beam never falls to half. */
    Optional<Angle> halfPowerWidth(Plane plane);

    /** From the axis to the first direction of no sound; none where the element is too small to have one. */
    Optional<Angle> firstNull(Plane plane);

    /** First side lobe against the axis [dB], negative. */
    double sideLobeDecibels();

    /** How far the near field reaches [m]: the Rayleigh distance, area over wavelength. */
    double nearField();

    /** Directivity index [dB]: how much stronger on the axis than spread evenly; for faces of a wavelength and more. */
    double directivityIndex();

    /** What an echo from straight below loses, out and back, where the beam looks off by these [dB], positive. */
    default double echoLoss(Angle foreAndAft, Angle athwart) {
        return -40 * Math.log10(Math.abs(response(foreAndAft, athwart)));
    }

    /** In which plane through the axis a width is taken. */
    enum Plane { FORE_AND_AFT, ATHWART }
}
