package org.garboard.siting;

import java.util.function.Supplier;
import org.garboard.mount.Seat;

/**
 * The nodes of a grid that a mount may be put on: all of it, its first column where the seat is on the keel line, or one row along
 * the lower edge of the transom.
 *
 * @param grid heights of the bottom
 * @param seat of the mount
 * @param beds to measure places by, one for each thread
 */
record Nodes(BottomGrid grid, Seat seat, Supplier<MeasuredBed> beds) {

    int rows() {
        return seat == Seat.BEHIND_TRANSOM ? 1 : grid.rows();
    }

    int columns() {
        return seat == Seat.ATHWART_KEEL ? 1 : grid.columns();
    }

    int size() {
        return rows() * columns();
    }

    /** x of a row [m]; NaN along the transom, whose bed knows it. */
    double x(int row) {
        return seat == Seat.BEHIND_TRANSOM ? Double.NaN : grid.x(row);
    }

    double y(int column) {
        return grid.y(column);
    }

    /** Whether the skin is known there, as far as that is told by the node; other seats look for themselves. */
    boolean onSkin(int row, int column) {
        return seat != Seat.BESIDE_KEEL || grid.onSkin(row, column);
    }
}
