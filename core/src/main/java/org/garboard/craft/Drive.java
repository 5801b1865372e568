package org.garboard.craft;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.garboard.units.Angle;

/**
 * What drives the boat.
 *
 * @param kind how the thrust comes into the water
 * @param number of engines with a propeller or a jet each, at least 1
 * @param hand how the propellers turn ahead, seen from aft; empty where it is not told, and for a jet
 * @param propellerDiameter [m]; empty where it is not told, and for a jet
 * @param toldThrust the line of thrust, where it is told
 * @param apart between the axes of neighbours, who stand evenly about the centreline [m]; empty where it is not told
 */
public record Drive(Kind kind, int number, Optional<Hand> hand, Optional<Double> propellerDiameter,
                    Optional<ThrustLine> toldThrust, Optional<Double> apart) {

    /** Where nobody tells how far apart the engines stand. */
    public Drive(Kind kind, int number, Optional<Hand> hand, Optional<Double> propellerDiameter, Optional<ThrustLine> toldThrust) {
        this(kind, number, hand, propellerDiameter, toldThrust, Optional.empty());
    }

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

        /** Whether its propellers turn abaft of the transom, and not under the bottom. */
        public boolean hangsBehind() {
            return this == OUTBOARD || this == STERNDRIVE;
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

    /** Half-breadths of the axes from port to starboard, port negative [m]; none where they are not told. */
    public List<Double> axes() {
        if (number == 1) {
            return List.of(0.0);
        }
        return apart.map(between -> IntStream.range(0, number).mapToObj(i -> (i - (number - 1) / 2.0) * between).toList()).orElse(List.of());
    }

    /**
     * On which side of an axis the blades go down: 1 to starboard, -1 to port, 0 where both do or it is not known. Of a pair that
     * turns opposite ways the starboard one is right-handed and the port one left-handed: common practice, no source.
     */
    public int downwardSide(double axis) {
        return hand.map(turns -> switch (turns) {
            case RIGHT -> 1;
            case LEFT -> -1;
            case COUNTER_ROTATING -> (int) Math.signum(axis);
        }).orElse(0);
    }

    /** As told, or as is usual for the kind. */
    public ThrustLine thrust() {
        return toldThrust.orElseGet(kind::usualThrust);
    }
}
