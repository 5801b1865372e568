package org.garboard.flow.planing;

import org.garboard.units.Angle;

/**
 * A bottom of one beam and one deadrise throughout.
 *
 * @param beam between the chines [m]
 * @param deadrise of the chord from keel to chine, 0 to 60 degrees
 */
public record Prism(double beam, Angle deadrise) {
    private static final double MOST_DEADRISE = 60;

    public Prism {
        if (!(beam > 0 && beam < 100)) {
            throw new IllegalArgumentException("beam between the chines is " + beam + " m; it must be more than 0 and less than 100 m");
        }
        if (!(deadrise.degrees() >= 0 && deadrise.degrees() <= MOST_DEADRISE)) {
            throw new IllegalArgumentException("deadrise is " + deadrise.degrees() + " deg; it must be from 0 to 60 deg");
        }
    }

    /** Of the stagnation line to the keel in plan, at a trim of the keel. */
    public Angle stagnationAngle(Angle trim) {
        return Angle.ofDegrees(Savitsky.stagnationAngle(trim.degrees(), deadrise.degrees()));
    }

    /** The spray ahead of the line at a trim of the keel; a bottom without deadrise throws it forward and has no edge. */
    public Spray spray(Angle trim) {
        return Spray.of(trim, deadrise);
    }

    /** C_V = V / sqrt(g b). */
    public double speedCoefficient(Stream stream) {
        return stream.speed() / Math.sqrt(stream.gravity() * beam);
    }
}
