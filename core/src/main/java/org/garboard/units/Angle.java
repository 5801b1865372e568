package org.garboard.units;

/**
 * An angle.
 *
 * @param radians its size [rad]
 */
public record Angle(double radians) {

    public static Angle ofRadians(double radians) {
        return new Angle(radians);
    }

    public static Angle ofDegrees(double degrees) {
        return new Angle(Math.toRadians(degrees));
    }

    public double degrees() {
        return Math.toDegrees(radians);
    }
}
