package org.garboard.acoustics.beam;

import java.util.Optional;
import org.garboard.units.Angle;

/** Angles from the axis of a beam, by their sines. */
final class Sines {

    private Sines() {
    }

    /** None above 1. */
    static Optional<Angle> angle(double sine) {
        return sine > 1 ? Optional.empty() : Optional.of(Angle.ofRadians(Math.asin(sine)));
    }

    /** Of the angle between the axis and a direction that leans by these in its two planes. */
    static double offAxis(Angle foreAndAft, Angle athwart) {
        double across = Math.hypot(Math.tan(foreAndAft.radians()), Math.tan(athwart.radians()));
        return across / Math.sqrt(1 + across * across);
    }

    static double ofHalf(Angle width) {
        if (!(width.radians() > 0 && width.radians() < Math.PI)) {
            throw new IllegalArgumentException("a beam width of " + width.degrees() + " deg; it must be more than 0 and less than 180 deg");
        }
        return Math.sin(width.radians() / 2);
    }

    static void requirePositive(String what, double metres) {
        if (!(metres > 0 && metres < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " is " + metres + " m; it must be more than 0");
        }
    }
}
