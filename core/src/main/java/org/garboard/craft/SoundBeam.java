package org.garboard.craft;

import org.garboard.units.Angle;

/**
 * One beam of a transducer as its maker tells it.
 *
 * @param frequency [Hz], more than 0
 * @param foreAndAft full width between half-power directions in the boat's length, more than 0 and less than 180 deg
 * @param athwart likewise across it; the same for a round element
 */
public record SoundBeam(double frequency, Angle foreAndAft, Angle athwart) {
    public SoundBeam {
        if (!(frequency > 0 && frequency < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a beam of " + frequency + " Hz; it must be more than 0");
        }
        requireWidth(foreAndAft);
        requireWidth(athwart);
    }

    private static void requireWidth(Angle width) {
        if (!(width.radians() > 0 && width.radians() < Math.PI)) {
            throw new IllegalArgumentException("a beam " + width.degrees() + " deg wide; it must be more than 0 and less than 180 deg");
        }
    }

    public boolean isRound() {
        return foreAndAft.equals(athwart);
    }
}
