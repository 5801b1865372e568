package org.garboard.siting;

import java.util.function.DoublePredicate;
import org.garboard.hull.Hull;
import org.garboard.mount.Mount;
import org.garboard.mount.Seat;

/**
 * How far a site may be moved each way alone: as far as the grid serves without a break, then step by
 * step of what a yard can mark, checked on the true surface. Fore and aft at the same y; inboard and
 * outboard along the skin.
 */
final class WindowFinder {
    private final Hull hull;
    private final BottomGrid grid;
    private final Suitability suitability;
    private final Mount mount;
    private final Mark mark;
    private final PlaceChecks checks;

    WindowFinder(Hull hull, BottomGrid grid, Suitability suitability, Mount mount, Mark mark, PlaceChecks checks) {
        this.hull = hull;
        this.grid = grid;
        this.suitability = suitability;
        this.mount = mount;
        this.mark = mark;
        this.checks = checks;
    }

    Window around(Site site) {
        if (mount.seat() == Seat.BEHIND_TRANSOM) {
            return new Window(0, 0, inboard(site), outboard(site));
        }
        double forward = farthest(served(site, -1, 0), d -> checks.serves(site.x() - d, site.y()));
        double aft = farthest(served(site, 1, 0), d -> checks.serves(site.x() + d, site.y()));
        if (mount.seat() == Seat.ATHWART_KEEL) {
            return new Window(forward, aft, 0, 0);
        }
        return new Window(forward, aft, inboard(site), outboard(site));
    }

    private double inboard(Site site) {
        return farthest(served(site, 0, -1), d -> servesAtGirth(site, -d));
    }

    private double outboard(Site site) {
        return farthest(served(site, 0, 1), d -> servesAtGirth(site, d));
    }

    private boolean servesAtGirth(Site site, double outboard) {
        if (site.girth() + outboard <= 0) {
            return false;
        }
        double guess = Math.max(0, Math.abs(site.y()) + outboard * Math.cos(site.deadrise()));
        double y = Girth.halfBreadth(hull, site.x(), site.girth() + outboard, guess);
        return !Double.isNaN(y) && checks.serves(site.x(), y);
    }

    /** Unbroken run of nodes that serve, from the site's nearest node in one direction, in plan [m]. */
    private double served(Site site, int rows, int columns) {
        int row = mount.seat() == Seat.BEHIND_TRANSOM ? 0 : grid.nearestRow(site.x());
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

    /** Largest whole number of marks that serves, sought from what the grid says [m]. */
    private double farthest(double start, DoublePredicate serves) {
        int from = (int) Math.rint(start / mark.step());
        int steps = from;
        while (steps > 0 && !serves.test(mark.steps(steps))) {
            steps--;
        }
        if (steps == from) {
            while (serves.test(mark.steps(steps + 1))) {
                steps++;
            }
        }
        return mark.steps(steps);
    }
}
