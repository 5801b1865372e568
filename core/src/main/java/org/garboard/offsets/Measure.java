package org.garboard.offsets;

/** Which block of the table a row stands in. */
public enum Measure {
    /** z [m], up from base. */
    HEIGHT,
    /** y [m], from the centreline. */
    HALF_BREADTH
}
