package org.garboard.siting;

import java.util.function.DoublePredicate;
import org.garboard.hull.Hull;
import org.garboard.mount.Mount;
import org.garboard.mount.Seat;

/**
 * How far a site may be moved each way alone: as far as is likely, then step by
 * step of what a yard can mark, checked on the true surface. Fore and aft at the same y; inboard and
 * outboard along the skin.
 */
final class WindowFinder {
    /** Nothing is known beforehand: from the site itself, mark by mark. */
    static final Start FROM_SITE = (site, rows, columns) -> 0;

    private final Hull hull;
    private final Start start;
    private final Mount mount;
    private final Mark mark;
    private final PlaceChecks checks;

    /** From where the end of a window is sought, in plan from the site [m]: one step of a row or of a column says which way. */
    interface Start {
        double served(Site site, int rows, int columns);
    }

    WindowFinder(Hull hull, Start start, Mount mount, Mark mark, PlaceChecks checks) {
        this.hull = hull;
        this.start = start;
        this.mount = mount;
        this.mark = mark;
        this.checks = checks;
    }

    Window around(Site site) {
        if (mount.seat() == Seat.BEHIND_TRANSOM) {
            return new Window(0, 0, inboard(site), outboard(site));
        }
        double forward = farthest(start.served(site, -1, 0), d -> checks.serves(site.x() - d, site.y()));
        double aft = farthest(start.served(site, 1, 0), d -> checks.serves(site.x() + d, site.y()));
        if (mount.seat() == Seat.ATHWART_KEEL) {
            return new Window(forward, aft, 0, 0);
        }
        return new Window(forward, aft, inboard(site), outboard(site));
    }

    private double inboard(Site site) {
        return farthest(start.served(site, 0, -1), d -> servesAtGirth(site, -d));
    }

    private double outboard(Site site) {
        return farthest(start.served(site, 0, 1), d -> servesAtGirth(site, d));
    }

    private boolean servesAtGirth(Site site, double outboard) {
        if (site.girth() + outboard <= 0) {
            return false;
        }
        double guess = Math.max(0, Math.abs(site.y()) + outboard * Math.cos(site.deadrise()));
        double y = Girth.halfBreadth(hull, site.x(), site.girth() + outboard, guess);
        return !Double.isNaN(y) && checks.serves(site.x(), y);
    }

    /** Largest whole number of marks that serves, sought from what the grid says [m]. */
    private double farthest(double likely, DoublePredicate serves) {
        int from = (int) Math.rint(likely / mark.step());
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
