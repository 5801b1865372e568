package org.garboard.siting;

import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.garboard.hull.Hull;
import org.garboard.mount.Mount;
import org.garboard.mount.Seat;

/**
 * The best place of a part of the grid, rounded to what a yard can mark and checked there on the true
 * surface.
 *
 * <p>Best is the least governing utilisation. Utilisations within a twentieth of the least count as
 * equal (our choice, because deadrise lofted from a table in eighths is true to about 0.2 deg, a
 * twentieth of what the element may lean); of equals the one nearest to where the keel line meets the
 * after end serves (common practice, no source: aft and near the centreline is longest in the water).
 */
final class SiteFinder {
    static final double EQUAL = 0.05;
    /** Difference that is rounding of the machine. */
    static final double SAME = 1e-6;
    /** Where so many places in turn fail at their rounded mark, the part has none (our choice). */
    private static final int TRIES = 500;

    private final Hull hull;
    private final Nodes nodes;
    private final Mount mount;
    private final Mark mark;
    private final PlaceChecks checks;

    SiteFinder(Hull hull, Nodes nodes, Mount mount, Mark mark, PlaceChecks checks) {
        this.hull = hull;
        this.nodes = nodes;
        this.mount = mount;
        this.mark = mark;
        this.checks = checks;
    }

    /** The best site of a part, with its window; empty where no place that can be marked serves. */
    Optional<Site> best(FeasiblePart part, Suitability suitability) {
        int[] open = part.nodes();
        for (int attempt = 0; attempt < TRIES; attempt++) {
            int best = bestOf(open, suitability::utilisation, EQUAL);
            if (best < 0) {
                break;
            }
            PlanPoint place = marked(best);
            if (checks.serves(place.x(), place.y())) {
                return Optional.of(withWindow(place, suitability));
            }
            open = Arrays.stream(open).filter(node -> node != best).toArray();
        }
        return Optional.empty();
    }

    /** Of nodes that may be the nearest, or of all. */
    Optional<Site> nearest(Asked asked) {
        return nearest(Suitability.nearest(nodes, asked));
    }

    /**
     * The place whose governing check is least exceeded, with every check; of equals the one that misses
     * least in all. Empty where none can be measured.
     */
    Optional<Site> nearest(Suitability suitability) {
        int[] measured = IntStream.range(0, suitability.size()).filter(suitability::measured).toArray();
        double least = least(measured, suitability::utilisation);
        int[] equals = Arrays.stream(measured)
            .filter(node -> suitability.utilisation(node) <= least + EQUAL).toArray();
        int best = bestOf(equals, suitability::missed, SAME);
        if (best < 0) {
            return Optional.empty();
        }
        PlanPoint place = marked(best);
        return Optional.of(checks.at(place.x(), place.y()));
    }

    /** Of nodes, the best by a figure that is to be small; -1 of none. */
    private int bestOf(int[] among, IntToDoubleFunction figure, double equal) {
        double least = least(among, figure);
        int best = -1;
        double nearest = Double.POSITIVE_INFINITY;
        for (int node : among) {
            if (figure.applyAsDouble(node) <= least + equal) {
                double distance = fromFoot(hull, x(node), nodes.y(column(node)));
                if (distance < nearest) {
                    nearest = distance;
                    best = node;
                }
            }
        }
        return best;
    }

    /** Distance in plan from where the keel line meets the after end [m]. */
    static double fromFoot(Hull hull, double x, double y) {
        return Math.hypot(hull.foot() - x, y);
    }

    private static double least(int[] nodes, IntToDoubleFunction figure) {
        double least = Double.POSITIVE_INFINITY;
        for (int node : nodes) {
            least = Math.min(least, figure.applyAsDouble(node));
        }
        return least;
    }

    /** The place of a node, x and girth rounded; the node itself where the skin ends before its rounded girth. */
    private PlanPoint marked(int node) {
        double x = mount.seat() == Seat.BEHIND_TRANSOM ? x(node) : mark.round(x(node));
        if (mount.seat() == Seat.ATHWART_KEEL) {
            return new PlanPoint(x, checks.aside());
        }
        double y = nodes.y(column(node));
        double marked = Girth.halfBreadth(hull, x, mark.round(hull.girth(x, y)), y);
        return new PlanPoint(x, checks.signed(Double.isNaN(marked) ? y : marked));
    }

    private Site withWindow(PlanPoint place, Suitability suitability) {
        Site site = checks.at(place.x(), place.y());
        return site.within(new WindowFinder(hull, new GridRun(nodes.grid(), suitability, mount.seat()), mount, mark, checks).around(site));
    }

    private double x(int node) {
        return mount.seat() == Seat.BEHIND_TRANSOM ? checks.transom() : nodes.x(row(node));
    }

    private int column(int node) {
        return node % nodes.columns();
    }

    private int row(int node) {
        return node / nodes.columns();
    }
}
