package org.garboard.takeoff;

/** The side of the boat that a point was measured on, whatever side of the stretched line it stands. */
public enum Side {
    PORT(-1), STARBOARD(1), CENTRE(1);

    private final int sign;

    Side(int sign) {
        this.sign = sign;
    }

    /** Turns a y of this side into a half-breadth. */
    double outward(double y) {
        return sign * y;
    }
}
