package org.garboard.craft;

import java.util.Optional;
import org.garboard.units.Angle;

/**
 * What drives the boat.
 *
 * @param kind how the thrust comes into the water
 * @param number of engines with a propeller or a jet each, at least 1
 * @param hand how the propellers turn ahead, seen from aft; empty where it is not told, and for a jet
 * @param propellerDiameter [m]; empty where it is not told, and for a jet
 * @param toldThrust the line of thrust, where it is told
 */
public record Drive(Kind kind, int number, Optional<Hand> hand, Optional<Double> propellerDiameter,
                    Optional<ThrustLine> toldThrust) {

    /** With the usual line of thrust of each. Common practice, no source: heights against the foot of the transom. */
    public enum Kind {
        /** The plate above the propeller runs level with the keel, the shaft some 180 mm below it. */
        OUTBOARD("outboard", -0.18, 0),
        /** As an outboard, a little lower. */
        STERNDRIVE("sterndrive", -0.22, 0),
        /** The shaft leaves the bottom ahead of the transom and runs down aft; its line, drawn on to the transom. */
        SHAFT("shaft", -0.45, 10),
        POD("pod", -0.6, 0),
        /** The nozzle stands in the transom a little above its foot. */
        JET("jet", 0.2, 0);

        private final String words;
        private final double height;
        private final double inclinationDegrees;

        Kind(String words, double height, double inclinationDegrees) {
            this.words = words;
            this.height = height;
            this.inclinationDegrees = inclinationDegrees;
        }

        public String words() {
            return words;
        }

        public ThrustLine usualThrust() {
            return new ThrustLine(height, Angle.ofDegrees(inclinationDegrees));
        }
    }

    /** Seen from aft, going ahead. */
    public enum Hand {
        /** All clockwise. */
        RIGHT,
        /** All counter-clockwise. */
        LEFT,
        /** As many one way as the other: a pair, or two on one leg. */
        COUNTER_ROTATING
    }

    public Drive {
        if (number < 1) {
            throw new IllegalArgumentException(number + " engines; 1 is the least");
        }
    }

    /** As told, or as is usual for the kind. */
    public ThrustLine thrust() {
        return toldThrust.orElseGet(kind::usualThrust);
    }
}
