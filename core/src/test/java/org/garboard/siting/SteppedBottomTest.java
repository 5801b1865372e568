package org.garboard.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.garboard.hull.Hull;
import org.garboard.hull.SteppedForms;
import org.garboard.mount.Check;
import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.StepChecks;
import org.garboard.mount.TransomMount;
import org.garboard.mount.Verdict;
import org.junit.jupiter.api.Test;

/** A V bottom with a step across it 5 m aft. */
class SteppedBottomTest {
    private static final Hull HULL = Hull.through(SteppedForms.prism());
    private static final SitingTask TASK = Boats.task(0.5, 0.2, 0.1, 14, Boats.FLUSH);

    private static Check step(double x, double y) {
        return Siting.at(HULL, TASK, new FlushThroughHull(), x, y).checks().stream()
            .filter(check -> check.name().equals("room ahead of a step")).findFirst().orElseThrow();
    }

    /** Room is from the footprint's after edge straight aft. */
    @Test
    void exact_roomAheadOfAStep() {
        double half = TASK.installation().transducer().length() / 2;
        Check check = step(4, 0.4);
        assertEquals(1000 * (1 - half), check.demand(), 1e-6);
        assertEquals(Verdict.MET, check.verdict());
        assertEquals(Verdict.NOT_MET, step(5 - half - 0.29, 0.4).verdict());
        assertEquals(Verdict.MET, step(5 - half - 0.31, -0.4).verdict());
    }

    @Test
    void law_abaftOfTheFirstStepIsNotKnown() {
        Check check = Siting.at(HULL, TASK, new FlushThroughHull(), 7, 0.4).checks().stream()
            .filter(each -> each.name().equals("clear of the air behind steps")).findFirst().orElseThrow();
        assertEquals(Verdict.NOT_KNOWN, check.verdict());
        assertEquals(StepChecks.BEHIND, check.sentence());
        MountSiting siting = Siting.search(HULL, TASK, 0.02).stream()
            .filter(each -> each.mount() instanceof FlushThroughHull).findFirst().orElseThrow();
        assertFalse(siting.sites().isEmpty());
        assertTrue(siting.sites().stream().allMatch(site -> site.x() < 4.7));
        assertTrue(siting.regions().stream().flatMap(region -> region.outline().stream()).allMatch(point -> point.x() < 4.7));
    }

    /**
     * Behind the transom the air of the steps is not known anywhere: no site is sought there, but the nearest place is told, and what is
     * not known of it. Its footprint does find a seat.
     */
    @Test
    void law_behindTheTransomTheNearestIsToldWhereNoPlaceCanBeRead() {
        SitingTask task = Boats.task(0.5, 0.2, 0.1, 0, new TransomMount());
        MountSiting siting = Siting.search(HULL, task, 0.02).get(0);
        assertTrue(siting.sites().isEmpty());
        Site nearest = siting.nearest().orElseThrow();
        assertEquals(HULL.foot(), nearest.x(), 1e-9);
        assertTrue(nearest.feasible());
        assertTrue(nearest.notKnown().stream().anyMatch(check -> check.name().equals("clear of the air behind steps")));
        UtilisationMap map = Siting.map(HULL, task, new TransomMount(), 0.02).get(0);
        int column = (int) Math.rint(nearest.y() / map.step());
        assertEquals(Double.POSITIVE_INFINITY, map.utilisation(0, column));
        assertEquals("clear of the air behind steps", map.checks().get(map.governing(0, column)));
    }

    /** Only a bottom with steps is asked. */
    @Test
    void law_withoutStepsNothingIsAsked() {
        Hull plain = Hull.through(SteppedForms.plain());
        assertTrue(Siting.at(plain, TASK, new FlushThroughHull(), 4, 0.4).checks().stream()
            .noneMatch(check -> check.name().contains("step")));
    }
}
