package org.garboard.drawing.survey;

import org.garboard.drawing.Point;

/**
 * A place in a view and the number that it gets.
 *
 * @param number in its balloon
 * @param place on the paper [mm]
 * @param seen whether it is on the side that is seen
 */
record MarkedSpot(String number, Point place, Seen seen) {

    /** On the side that is seen, or behind it. */
    enum Seen { NEAR, FAR }
}
