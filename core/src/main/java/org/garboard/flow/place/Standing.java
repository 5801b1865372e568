package org.garboard.flow.place;

/** Whether a figure is held against a limit. */
public enum Standing {
    JUDGED,
    /** Told only: so slow that layers are thick but quiet, and nothing cavitates. */
    REPORTED;

    /** Knots from which layer and cavitation are judged: our choice, settable. */
    public static final double USUAL_FROM = 8;
    private static final double KNOT = 1852 / 3600.0;

    /** At a speed [m/s], judged from so many knots up. */
    public static Standing at(double speed, double fromKnots) {
        return speed >= fromKnots * KNOT * (1 - 1e-12) ? JUDGED : REPORTED;
    }
}
