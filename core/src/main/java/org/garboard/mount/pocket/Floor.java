package org.garboard.mount.pocket;

import org.garboard.units.Angle;

/**
 * How the floor, and the body's face with it, lies.
 *
 * @param lies athwartships
 * @param trailingEdgeLower by how much its after edge is lower than along the run of the bottom; negative for nose-down
 */
public record Floor(Lies lies, Angle trailingEdgeLower) {
    /** Level, and along the run of the bottom. */
    public static final Floor USUAL = new Floor(Lies.LEVEL_ATHWART, Angle.ofDegrees(0));
    /** Common practice, no source [deg]. */
    public static final double MOST_DROP_DEG = 2;
    /** Above this speed no face stands nose-down: common practice, no source. */
    public static final double NOSE_DOWN_KNOTS = 10;

    /** Athwartships. */
    public enum Lies { LEVEL_ATHWART, SQUARE_TO_SKIN }

    /** By how much an end of a body so long stands lower than its middle [m]. */
    public double tilt(double length) {
        return length / 2 * Math.tan(Math.abs(trailingEdgeLower.radians()));
    }
}
