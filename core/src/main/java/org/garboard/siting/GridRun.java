package org.garboard.siting;

import org.garboard.mount.Seat;

/** How far the nodes of a grid serve without a break from a site, one way. */
final class GridRun implements WindowFinder.Start {
    private final BottomGrid grid;
    private final Suitability suitability;
    private final Seat seat;

    GridRun(BottomGrid grid, Suitability suitability, Seat seat) {
        this.grid = grid;
        this.suitability = suitability;
        this.seat = seat;
    }

    @Override
    public double served(Site site, int rows, int columns) {
        int row = seat == Seat.BEHIND_TRANSOM ? 0 : grid.nearestRow(site.x());
        int column = Math.min(suitability.columns() - 1, grid.nearestColumn(Math.abs(site.y())));
        int steps = 0;
        while (serves(row + rows * (steps + 1), column + columns * (steps + 1))) {
            steps++;
        }
        return steps * grid.step();
    }

    private boolean serves(int row, int column) {
        return row >= 0 && row < suitability.size() / suitability.columns() && column >= 0 && column < suitability.columns()
            && suitability.serves(row * suitability.columns() + column);
    }
}
