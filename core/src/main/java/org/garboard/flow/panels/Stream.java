package org.garboard.flow.panels;

/** The undisturbed stream: a unit vector. */
public record Stream(double x, double y, double z) {
    /** Straight aft. */
    public static final Stream AFT = new Stream(1, 0, 0);

    public Stream {
        double square = x * x + y * y + z * z;
        if (!(Math.abs(square - 1) < 1e-9)) {
            throw new IllegalArgumentException("stream (" + x + ", " + y + ", " + z + ") is not of unit speed");
        }
    }
}
