package org.garboard.tablefile;

import org.garboard.offsets.EndPoint;

/**
 * Where a line ends, and the cells that say so.
 *
 * @param line the cell that names the line
 * @param distance the cell with the distance
 * @param point what they say
 */
record PlacedEnd(Cell line, Cell distance, EndPoint point) {
    double x() {
        return point.x();
    }
}
