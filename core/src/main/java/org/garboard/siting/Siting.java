package org.garboard.siting;

import java.util.List;
import org.garboard.hull.Hull;
import org.garboard.mount.Mount;

/** Where on the bottom: the search of the whole bottom, and the checks of one place. */
public final class Siting {

    private Siting() {
    }

    /**
     * Feasible regions and best sites of every mount of the task, in its order. The answer does not
     * depend on the number of threads.
     */
    public static List<MountSiting> search(Hull hull, SitingTask task, int threads) {
        throw new IllegalStateException("skeleton");
    }

    /**
     * Every check of a mount at one place: x aft, y to starboard [m], as asked, not rounded. A place
     * off the skin is a check that is not met.
     */
    public static Site at(Hull hull, SitingTask task, Mount mount, double x, double y) {
        throw new IllegalStateException("skeleton");
    }
}
