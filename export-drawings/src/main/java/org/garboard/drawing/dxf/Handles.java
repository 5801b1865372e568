package org.garboard.drawing.dxf;

/** Gives every record of a DXF its own handle, counting up. */
final class Handles {
    private int next = 1;

    int next() {
        return next++;
    }

    /** Greater than every handle given so far. */
    int seed() {
        return next;
    }
}
