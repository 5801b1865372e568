package org.garboard.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.FeaturePlace;
import org.garboard.craft.Fitting;
import org.garboard.craft.Sides;
import org.garboard.hull.Hull;

/** Whatever the boat, and whatever stands on one side of her: the answer does not hang on how she is told. */
class AnyBoatTest {
    /** Of the grid [m]: coarse, for the sake of time. */
    private static final double STEP = 0.04;

    @Property(tries = 12, shrinking = ShrinkingMode.OFF, seed = "58")
    void law_theAnswerStays(@ForAll @DoubleRange(min = 20, max = 32) double fore, @ForAll @DoubleRange(min = 8, max = 22) double aft,
                            @ForAll @DoubleRange(min = 1, max = 5) double x, @ForAll @DoubleRange(min = 0.1, max = 0.8) double y,
                            @ForAll @DoubleRange(min = 8, max = 22) double lean, @ForAll @IntRange(min = -250, max = 250) int steps) {
        // the grid stands on whole steps from the origin: shifted by less, a place may come to lie a step away
        double from = steps * STEP;
        Hull hull = Boats.warpedV(fore, aft, 0);
        Hull elsewhere = Boats.warpedV(fore, aft, from);
        SitingTask task = task(hull, Sides.PORT, x, y, lean);
        MountSiting told = Siting.search(hull, task, STEP).get(0);
        assertSame(told, Siting.search(hull, task(hull, Sides.STARBOARD, x, y, lean), STEP).get(0), 0, -1);
        assertSame(told, Siting.search(elsewhere, task(elsewhere, Sides.PORT, x + from, y, lean), STEP).get(0), from, 1);
        for (Site site : told.sites()) {
            assertTrue(Siting.at(hull, task, site.mount(), site.x(), site.y()).feasible());
        }
    }

    private static SitingTask task(Hull hull, Sides side, double x, double y, double lean) {
        SitingTask bare = Boats.task(0.55, 0.140, 0.090, lean, Boats.FLUSH);
        Fitting drain = new Fitting("Drain", Fitting.Type.DRAIN, side,
            new FeaturePlace(FeaturePlace.Datum.AFT_OF_ORIGIN, x, FeaturePlace.Measure.HALF_BREADTH, y), 0.3, 0.2, Optional.empty());
        return new SitingTask(bare.draught(), bare.installation(), bare.mounts(), bare.mark(), BottomFeatures.on(hull, Optional.of(List.of(drain))));
    }

    /** @param sign -1 where port and starboard are changed over */
    private static void assertSame(MountSiting told, MountSiting other, double from, int sign) {
        assertEquals(told.sites().size(), other.sites().size());
        for (Site site : told.sites()) {
            // two that are alike stand in the order of their sides
            assertTrue(other.sites().stream().anyMatch(match -> Math.abs(site.x() + from - match.x()) < 1e-7 && Math.abs(site.y() - sign * match.y()) < 1e-7
                && Math.abs(site.governing().orElseThrow().utilisation() - match.governing().orElseThrow().utilisation()) < 1e-6),
                () -> site.x() + ", " + site.y() + " is not among " + other.sites().stream().map(match -> match.x() + ", " + match.y()).toList());
        }
        assertEquals(told.nearest().map(site -> Math.rint(1e6 * (site.x() + from))), other.nearest().map(site -> Math.rint(1e6 * site.x())));
        assertEquals(told.regions().stream().mapToDouble(Region::area).sum(), other.regions().stream().mapToDouble(Region::area).sum(), 1e-6);
    }
}
