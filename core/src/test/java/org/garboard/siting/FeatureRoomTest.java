package org.garboard.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Feature;
import org.garboard.craft.FeaturePlace;
import org.garboard.craft.FeaturePlace.Datum;
import org.garboard.craft.FeaturePlace.Measure;
import org.garboard.craft.Fitting;
import org.garboard.craft.Sides;
import org.garboard.craft.Strake;
import org.garboard.hull.Hull;
import org.garboard.mount.Check;
import org.garboard.mount.Mount;
import org.garboard.mount.Verdict;
import org.junit.jupiter.api.Test;

/** Rooms to strakes and fittings on a wedge of 20 deg, 6 m long, 1 m in half-breadth. */
class FeatureRoomTest {
    private static final String ROOM = "room to strakes and fittings";
    private static final double COSINE = Math.cos(Math.toRadians(20));
    private static final Hull HULL = Boats.prismaticV(20);
    /** 60 mm wide, its middle 0.5 m out, from 2 m aft to 1 m ahead of the end. */
    private static final Strake STRAKE = new Strake("Strake", Sides.BOTH, List.of(
        new FeaturePlace(Datum.AFT_OF_ORIGIN, 2, Measure.HALF_BREADTH, 0.5),
        new FeaturePlace(Datum.AHEAD_OF_AFTER_END, 1, Measure.GIRTH, 0.5 / COSINE)), 0.060, 0.030);

    private static SitingTask task(List<Feature> features, Mount... mounts) {
        SitingTask bare = Boats.task(0.5, 0.300, 0.140, 18, mounts);
        return new SitingTask(bare.draught(), bare.installation(), bare.mounts(), bare.mark(),
            BottomFeatures.on(HULL, Optional.of(features)));
    }

    private static Check check(Site site, String name) {
        return site.checks().stream().filter(check -> check.name().equals(name)).findFirst().orElseThrow();
    }

    private static Check at(List<Feature> features, double x, double y) {
        return check(Siting.at(HULL, task(features, Boats.FLUSH), Boats.FLUSH, x, y), ROOM);
    }

    @Test
    void exact_roomBesideAStrakeAndPastItsEnd() {
        double beside = 0.5 + 0.030 + 0.060 + 0.070 * COSINE;
        Check clear = at(List.of(STRAKE), 3, beside);
        assertEquals(60, clear.demand(), 1e-6);
        assertEquals(Verdict.MET, clear.verdict());
        assertEquals("No strake or fitting that is told is near. Nearest: lifting strake \"Strake\", both sides.", clear.sentence());
        assertEquals(Verdict.NOT_MET, at(List.of(STRAKE), 3, beside - 0.011).verdict());
        assertEquals(Verdict.NOT_MET, at(List.of(STRAKE), 3, 0.5).verdict());
        assertEquals(100, at(List.of(STRAKE), 5.25, 0.5).demand(), 1e-6, "aft of its end");
    }

    /** A strake on the port side alone does not matter to a place to starboard; the search keeps clear of it on both. */
    @Test
    void law_sides() {
        Strake port = new Strake("Strake", Sides.PORT, STRAKE.places(), STRAKE.width(), STRAKE.depth());
        assertEquals(Verdict.NOT_MET, at(List.of(port), 3, -0.5).verdict());
        assertEquals(Verdict.MET, at(List.of(port), 3, 0.5).verdict());
        List<Region> both = Siting.search(HULL, task(List.of(STRAKE), Boats.FLUSH)).get(0).regions();
        List<Region> bare = Siting.search(HULL, task(List.of(), Boats.FLUSH)).get(0).regions();
        MountSiting siting = Siting.search(HULL, task(List.of(port), Boats.FLUSH)).get(0);
        assertEquals(bare.stream().map(region -> region.on(Sides.STARBOARD)).toList(),
            siting.regions().stream().filter(region -> region.sides() == Sides.STARBOARD).toList());
        assertEquals(both.stream().map(region -> region.on(Sides.PORT)).toList(),
            siting.regions().stream().filter(region -> region.sides() == Sides.PORT).toList());
        for (Region region : siting.regions()) {
            assertTrue(region.outline().stream().allMatch(point -> region.sides() == Sides.PORT ? point.y() < 0 : point.y() > 0));
        }
        for (Site site : siting.sites()) {
            assertTrue(Siting.at(HULL, task(List.of(port), Boats.FLUSH), Boats.FLUSH, site.x(), site.y()).feasible());
        }
    }

    /** The search leaves a band beside the strake, 50 mm and half the body's breadth on either side. */
    @Test
    void law_noRegionReachesIntoTheRoomOfAStrake() {
        double band = 0.030 + 0.050 + 0.070 * COSINE;
        MountSiting siting = Siting.search(HULL, task(List.of(STRAKE), Boats.FLUSH)).get(0);
        assertFalse(siting.sites().isEmpty());
        for (Region region : siting.regions()) {
            for (List<PlanPoint> ring : java.util.stream.Stream.concat(java.util.stream.Stream.of(region.outline()), region.holes().stream()).toList()) {
                for (PlanPoint point : ring) {
                    boolean within = point.x() > 2 && point.x() < 5 && Math.abs(point.y() - 0.5) < band - 1e-6;
                    assertFalse(within, point.toString());
                }
            }
        }
        for (Site site : siting.sites()) {
            assertTrue(site.feasible() && check(site, ROOM).demand() >= 50 - 1e-6);
        }
    }

    /** A drain on the centreline 0.2 m wide: a pocket's ramps count, and none may lie over it. */
    @Test
    void exact_pocketAndADrain() {
        Fitting drain = new Fitting("Drain", Fitting.Type.DRAIN, Sides.BOTH,
            new FeaturePlace(Datum.AFT_OF_ORIGIN, 3, Measure.HALF_BREADTH, 0), 0.2, 0.2, Optional.of(0.0));
        SitingTask task = task(List.of(drain), Boats.POCKET);
        assertEquals(Verdict.NOT_MET, check(Siting.at(HULL, task, Boats.POCKET, 3, 0), ROOM).verdict());
        Site aside = Siting.at(HULL, task, Boats.POCKET, 4.8, 0);
        double ramp = Boats.POCKET.ramp(task.installation(), 0.075 * Math.tan(Math.toRadians(20)));
        assertEquals(1000 * (1.8 - 0.1 - 0.155 - ramp), check(aside, ROOM).demand(), 1e-6);
    }

    /** A propeller on either side keeps every place that is not a metre ahead of it out. */
    @Test
    void exact_aheadOfThePropellers() {
        Fitting propeller = new Fitting("Wheel", Fitting.Type.PROPELLER, Sides.PORT,
            new FeaturePlace(Datum.AFT_OF_ORIGIN, 5.1, Measure.HALF_BREADTH, 0.7), 0.2, 0.4, Optional.empty());
        SitingTask task = task(List.of(propeller), Boats.FLUSH);
        Check clear = check(Siting.at(HULL, task, Boats.FLUSH, 3.8, -0.4), "ahead of the propellers");
        assertEquals(5.0 - 3.95, clear.demand() / 1000, 1e-9);
        assertEquals(Verdict.MET, clear.verdict());
        assertEquals(Verdict.NOT_MET, check(Siting.at(HULL, task, Boats.FLUSH, 3.9, -0.4), "ahead of the propellers").verdict());
        assertEquals(Verdict.NOT_MET, check(Siting.at(HULL, task, Boats.FLUSH, 5.5, -0.2), "ahead of the propellers").verdict());
        for (Region region : Siting.search(HULL, task).get(0).regions()) {
            assertTrue(region.outline().stream().allMatch(point -> point.x() <= 3.85 + 1e-9));
        }
    }

    /** Nothing listed is nothing known; an empty list says that the bottom is bare. */
    @Test
    void law_aMissingListIsNotKnown() {
        Site unlisted = Siting.at(HULL, Boats.task(0.5, 0.300, 0.140, 18, Boats.FLUSH), Boats.FLUSH, 3, 0.5);
        assertEquals(Verdict.NOT_KNOWN, check(unlisted, "strakes and fittings").verdict());
        assertEquals(Verdict.MET, at(List.of(), 3, 0.5).verdict());
        assertTrue(Siting.at(HULL, task(List.of(), Boats.FLUSH), Boats.FLUSH, 3, 0.5).checks().stream()
            .noneMatch(check -> check.name().equals("strakes and fittings")));
    }

    @Test
    void badInput_placesOffTheSkin() {
        Strake off = new Strake("Off", Sides.BOTH, List.of(STRAKE.places().get(0),
            new FeaturePlace(Datum.AFT_OF_ORIGIN, 3, Measure.GIRTH, 5)), 0.060, 0.030);
        assertEquals(1, off.placeOffSkin(HULL).orElseThrow());
        assertTrue(STRAKE.placeOffSkin(HULL).isEmpty());
    }
}
