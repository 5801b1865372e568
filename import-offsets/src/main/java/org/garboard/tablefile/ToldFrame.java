package org.garboard.tablefile;

/**
 * How a distance along the boat, as the file tells it, becomes x.
 *
 * @param sense 1 where distances run aft, -1 where they run forward, 0 where that could not be told
 * @param origin x would be this at the place from which x is measured, were it not taken off [m]
 */
record ToldFrame(double sense, double origin) {
    static final ToldFrame FROM_FORWARD = new ToldFrame(1, 0);
    static final ToldFrame UNKNOWN = new ToldFrame(0, 0);

    double x(double told) {
        return this == UNKNOWN ? told : sense * told - origin;
    }

    /** The distance as the file tells it. */
    double told(double x) {
        return this == UNKNOWN ? x : sense * (x + origin);
    }
}
