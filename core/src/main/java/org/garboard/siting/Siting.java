package org.garboard.siting;

import java.util.ArrayList;
import java.util.List;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.hull.Hull;
import org.garboard.mount.Mount;

/** Where on the bottom: the search of the whole bottom, and the checks of one place. */
public final class Siting {
    /** Side of the grid's cells [m]. */
    static final double GRID_STEP = 0.010;

    private Siting() {
    }

    /**
     * Feasible regions and best sites of every mount of the task, in its order. The answer does not
     * depend on the number of processors.
     *
     * <p>A region on which no place that a yard can mark passes every check is left out; of the rest
     * the eight largest are kept, each with its best site. The sites pass every check that can be
     * made when asked by {@link #at}. Where anything that is told is not alike on both sides, each side is searched by
     * itself.
     */
    public static List<MountSiting> search(Hull hull, SitingTask task) {
        return search(hull, task, GRID_STEP);
    }

    /** @param step side of the grid's cells [m] */
    public static List<MountSiting> search(Hull hull, SitingTask task, double step) {
        BottomSearch search = new BottomSearch(hull, task, step);
        List<MountSiting> sitings = new ArrayList<>();
        for (Mount mount : task.mounts()) {
            sitings.add(search.of(mount));
        }
        return sitings;
    }

    /**
     * How the whole bottom serves a mount; a map for each side where they are not alike.
     *
     * @param step side of the grid's cells [m]
     */
    public static List<UtilisationMap> map(Hull hull, SitingTask task, Mount mount, double step) {
        return new BottomSearch(hull, task, step).map(mount);
    }

    /**
     * Every check of a mount at one place: x aft, y to starboard [m], as asked, not rounded. A place
     * off the skin is a check that is not met, and what cannot be measured there is NOT KNOWN.
     */
    public static Site at(Hull hull, SitingTask task, Mount mount, double x, double y) {
        return checks(hull, task, mount, y).at(x, y);
    }

    /** The same of a place that serves, with how far it may be moved. */
    public static Site withWindow(Hull hull, SitingTask task, Mount mount, double x, double y) {
        PlaceChecks checks = checks(hull, task, mount, y);
        Site site = checks.at(x, y);
        return site.within(new WindowFinder(hull, WindowFinder.FROM_SITE, mount, task.mark(), checks).around(site));
    }

    /** A transducer put at a place that has a seat for it, as a feature of the bottom that another keeps clear of. */
    public static LaidFeature laid(Hull hull, SitingTask task, Mount mount, double x, double y) {
        MeasuredBed bed = Beds.fine(ground(hull, task, y), mount, task.installation());
        if (!bed.measure(x, Math.abs(y))) {
            throw new IllegalArgumentException("a " + mount.words() + " finds no seat at x = " + x + " m, y = " + y + " m");
        }
        return PlacedBody.on(hull, task, mount, bed);
    }

    private static PlaceChecks checks(Hull hull, SitingTask task, Mount mount, double y) {
        return new PlaceChecks(hull, ground(hull, task, y), task, mount);
    }

    private static Ground ground(Hull hull, SitingTask task, double y) {
        Sides sides = Ground.sideOf(y);
        BottomLines lines = BottomLines.of(hull);
        return new Ground(lines.skin(hull), lines, Obstacles.of(task.features(), sides), task.draught(), sides);
    }
}
