package org.garboard.siting;

import java.util.List;
import java.util.Optional;
import org.garboard.mount.Check;
import org.garboard.mount.Mount;
import org.garboard.mount.Verdict;

/**
 * One mount at one place with every check.
 *
 * @param mount how the transducer goes in
 * @param x of the footprint's centre, aft of station 0 [m], rounded to what a yard can mark
 * @param y of the centre [m], starboard positive; 0 on the keel
 * @param z of the skin there [m]
 * @param girth from the keel line along the skin [m]
 * @param deadrise of the best plane under the footprint (0 athwart the keel) [rad]
 * @param slope of that plane fore and aft, dz/dx [rad], positive rising aft
 * @param checks every check, in the mount's order
 * @param window how far either way is still good; empty for a place that was asked about
 */
public record Site(Mount mount, double x, double y, double z, double girth,
                   double deadrise, double slope, List<Check> checks, Optional<Window> window) {
    public Site {
        checks = List.copyOf(checks);
    }

    /** The check with the highest utilisation among those that could be made. */
    public Optional<Check> governing() {
        Check worst = null;
        for (Check check : checks) {
            if (check.verdict() != Verdict.NOT_KNOWN
                    && (worst == null || check.utilisation() > worst.utilisation())) {
                worst = check;
            }
        }
        return Optional.ofNullable(worst);
    }

    /** True when no check that could be made is not met. Checks NOT KNOWN are still to be looked at. */
    public boolean feasible() {
        return checks.stream().noneMatch(check -> check.verdict() == Verdict.NOT_MET);
    }

    /** The checks that could not be made: to be looked at before cutting. */
    public List<Check> notKnown() {
        return checks.stream().filter(check -> check.verdict() == Verdict.NOT_KNOWN).toList();
    }

    /** The same place, whatever is said of it. */
    boolean sharesPlace(Site other) {
        return x == other.x && y == other.y;
    }

    Site within(Window around) {
        return new Site(mount, x, y, z, girth, deadrise, slope, checks, Optional.of(around));
    }
}
