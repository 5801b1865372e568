package org.garboard.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.garboard.hull.Hull;
import org.garboard.mount.Mount;
import org.junit.jupiter.api.Test;

/** The search of hulls whose feasible regions and best sites are known. */
class SearchTest {
    private static final double COSINE = Math.cos(Math.toRadians(20));

    private static SitingTask task(double draught, Mount... mounts) {
        return Boats.task(draught, 0.300, 0.140, 18, mounts);
    }

    private static MountSiting only(Hull hull, SitingTask task) {
        List<MountSiting> sitings = Siting.search(hull, task);
        assertEquals(task.mounts(), sitings.stream().map(MountSiting::mount).toList());
        return sitings.get(0);
    }

    private static double least(Region region, java.util.function.ToDoubleFunction<PlanPoint> of) {
        return region.outline().stream().mapToDouble(of).min().orElseThrow();
    }

    private static double most(Region region, java.util.function.ToDoubleFunction<PlanPoint> of) {
        return region.outline().stream().mapToDouble(of).max().orElseThrow();
    }

    /**
     * On a wedge of 20 deg the region is a rectangle: 300 mm and half a length from the ends; 50 mm and
     * half a width from the keel line, 100 mm and half a width from the chine, along the skin.
     */
    @Test
    void exact_flushRegionOfAPrismaticV() {
        MountSiting siting = only(Boats.prismaticV(20), task(0.5, Boats.FLUSH));
        assertEquals(1, siting.regions().size());
        Region region = siting.regions().get(0);
        double inner = 0.120 * COSINE;
        double outer = 1 - 0.170 * COSINE;
        assertEquals(0.45, least(region, PlanPoint::x), 1e-9);
        assertEquals(5.55, most(region, PlanPoint::x), 1e-9);
        assertEquals(inner, least(region, PlanPoint::y), 1e-6);
        assertEquals(outer, most(region, PlanPoint::y), 1e-6);
        double lost = 5.10 * (outer - inner) - region.area();
        assertTrue(lost > -1e-5 && lost < 4 * 0.01 * 0.01 / 2 + 0.0001 * 2 * (5.10 + outer - inner), "lost " + lost);
        assertTrue(region.holes().isEmpty());
        assertTrue(siting.nearest().isEmpty());
    }

    /** Beside a box keel the region begins 50 mm and half a width from its top edge; none lies across its side. */
    @Test
    void exact_flushRegionBesideABoxKeel() {
        MountSiting siting = only(Boats.boxKeel(20), task(0.5, Boats.FLUSH));
        assertEquals(1, siting.regions().size());
        assertEquals(0.15 + 0.120 * COSINE, least(siting.regions().get(0), PlanPoint::y), 1e-6);
        assertEquals(1.15 - 0.170 * COSINE, most(siting.regions().get(0), PlanPoint::y), 1e-6);
        Site site = siting.sites().get(0);
        assertEquals(0.45 + (site.y() - 0.15) / COSINE, site.girth(), 1e-9, "half-siding, side, bottom");
    }

    /** Beside a keel that hangs below the skin the bottom begins at the rabbet, and girth with it; nothing goes athwart the keel. */
    @Test
    void exact_flushRegionBesideADeepKeel() {
        for (int inclination : new int[] {18, 0}) {
            MountSiting siting = Siting.search(Boats.deepKeel(20), Boats.task(0.5, 0.300, 0.140, inclination, Boats.FLUSH)).get(0);
            assertEquals(inclination == 0 ? 0 : 1, siting.regions().size());
        }
        MountSiting siting = only(Boats.deepKeel(20), task(0.5, Boats.FLUSH));
        assertEquals(0.15 + 0.120 * COSINE, least(siting.regions().get(0), PlanPoint::y), 1e-6);
        assertEquals(1.15 - 0.170 * COSINE, most(siting.regions().get(0), PlanPoint::y), 1e-6);
        Site site = siting.sites().get(0);
        assertEquals((site.y() - 0.15) / COSINE, site.girth(), 1e-9);
        MountSiting pocket = only(Boats.deepKeel(20), Boats.task(0.5, 0.300, 0.140, 0, Boats.POCKET));
        assertTrue(pocket.regions().isEmpty() && pocket.nearest().isEmpty());
        assertFalse(Siting.at(Boats.deepKeel(20), task(0.5, Boats.FLUSH), Boats.FLUSH, 3, 0.1).feasible());
    }

    /** An upright element finds its place on the flat bottom of the keel: 50 mm and half a width from its edge and its middle line. */
    @Test
    void exact_uprightElementUnderABoxKeel() {
        SitingTask task = Boats.task(0.5, 0.040, 0.020, 0, Boats.FLUSH);
        Region region = only(Boats.boxKeel(20), task).regions().get(0);
        assertEquals(0.060, least(region, PlanPoint::y), 1e-6);
        assertEquals(0.090, most(region, PlanPoint::y), 1e-6);
    }

    /** A pocket that fits between the edges of the keel has its strip; one that is wider has no place, and is told why. */
    @Test
    void exact_pocketUnderABoxKeel() {
        MountSiting narrow = only(Boats.boxKeel(20), Boats.task(0.5, 0.300, 0.140, 0, Boats.POCKET));
        assertEquals(1, narrow.regions().size());
        MountSiting wide = only(Boats.boxKeel(20), Boats.task(0.5, 0.300, 0.240, 0, Boats.POCKET));
        assertEquals(0, wide.regions().size());
        assertEquals("room to other knuckles", wide.nearest().orElseThrow().governing().orElseThrow().name());
    }

    /** The chine's curve swings a little across the centreline ahead of where it leaves it: no skin there, and no fault. */
    @Test
    void law_aChineThatRunsIntoTheCentreline() {
        Hull hull = Boats.knifeBow();
        assertTrue(hull.bottomEdge().y(0.5) < -0.02 || hull.bottomEdge().y(1.5) < -0.02);
        for (PlanPoint corner : only(hull, task(0.5, Boats.FLUSH)).regions().get(0).outline()) {
            assertTrue(corner.x() > 1.5, corner.toString());
        }
    }

    /** At 300 mm of water the face's upper edge, 70 mm above the centre along the skin, may lie 200 mm up. */
    @Test
    void exact_immersionBoundsTheRegion() {
        Region region = only(Boats.prismaticV(20), task(0.3, Boats.FLUSH)).regions().get(0);
        double girth = 0.2 / Math.sin(Math.toRadians(20)) - 0.070;
        assertEquals(girth * COSINE, most(region, PlanPoint::y), 1e-6);
    }

    /**
     * Lean governs at 2 / 4 deg all over; the places that use up no more than 0.55 of any limit reach
     * aft to 300 / 0.55 mm and half a length from the end, inboard to 50 / 0.55 mm and half a width from
     * the keel, and that corner is nearest to the foot of the transom: at the nodes x = 5.30, y = 0.16, marked 5.30, girth 0.170.
     */
    @Test
    void exact_flushSiteOfAPrismaticV() {
        MountSiting siting = only(Boats.prismaticV(20), task(0.5, Boats.FLUSH));
        assertEquals(1, siting.sites().size());
        Site site = siting.sites().get(0);
        assertEquals(5.30, site.x(), 1e-12);
        assertEquals(0.170, site.girth(), 1e-8);
        assertEquals(0.170 * COSINE, site.y(), 1e-8);
        assertEquals("room to the ends of the table", site.governing().orElseThrow().name());
        assertEquals(0.3 / 0.55, site.governing().orElseThrow().utilisation(), 1e-6);
        Window window = site.window().orElseThrow();
        assertWithinAStep(5.30 - 0.45, window.forward());
        assertWithinAStep(5.55 - 5.30, window.aft());
        assertWithinAStep(0.170 - 0.120, window.inboard());
        assertWithinAStep(1 / COSINE - 0.170 - 0.170, window.outboard());
    }

    private static void assertWithinAStep(double whole, double window) {
        assertTrue(window <= whole + 1e-9 && window > whole - 0.005 - 1e-9, window + " of " + whole);
    }

    /**
     * Floor 310 mm, walls that lean out by 60 tan 5 + 15 tan 42.5 = 18.994 mm, ramps of 224 mm, 300 mm to the ends: the
     * strip from 0.698 m to 5.302 m, 150 mm wide.
     */
    @Test
    void exact_pocketOnAPrismaticV() {
        MountSiting siting = only(Boats.prismaticV(20), Boats.task(0.5, 0.300, 0.140, 0, Boats.POCKET));
        assertEquals(1, siting.regions().size());
        Region region = siting.regions().get(0);
        double end = 0.679 + 0.060 * Math.tan(Math.toRadians(5)) + 0.015 * Math.tan(Math.toRadians(42.5));
        assertEquals(end, least(region, PlanPoint::x), 1e-6);
        assertEquals(6 - end, most(region, PlanPoint::x), 1e-6);
        assertEquals(-0.075, least(region, PlanPoint::y), 1e-12);
        assertEquals(0.075, most(region, PlanPoint::y), 1e-12);
        assertEquals((6 - 2 * end) * 0.15, region.area(), 1e-6);
        Site site = siting.sites().get(0);
        assertEquals(0, site.y());
        // the depth lost governs all along: 27.3 of 100 mm; a twentieth of the limit more is as good
        double room = 0.3 / (0.075 * Math.tan(Math.toRadians(20)) / 0.100 + 0.05);
        assertEquals(Math.floor((6 - (end - 0.3) - room) * 100) / 100, site.x(), 1e-9);
        Window window = site.window().orElseThrow();
        assertWithinAStep(site.x() - end, window.forward());
        assertWithinAStep(6 - end - site.x(), window.aft());
        assertEquals(0, window.inboard());
        assertEquals(0, window.outboard());
    }

    /** A knuckle divides the bottom: 50 mm and half a width off it either side. */
    @Test
    void exact_aKnuckleDividesTheRegion() {
        MountSiting siting = only(Boats.brokenV(20, 17), task(0.5, Boats.FLUSH));
        assertEquals(2, siting.regions().size());
        Region inner = siting.regions().get(0);
        Region outer = siting.regions().get(1);
        if (least(inner, PlanPoint::y) > 0.5) {
            inner = siting.regions().get(1);
            outer = siting.regions().get(0);
        }
        assertTrue(siting.regions().get(0).area() >= siting.regions().get(1).area());
        assertEquals(0.5 - 0.120 * COSINE, most(inner, PlanPoint::y), 1e-6);
        assertEquals(0.5 + 0.120 * Math.cos(Math.toRadians(17)), least(outer, PlanPoint::y), 1e-6);
        assertEquals(2, siting.sites().size());
    }

    /** tan of the deadrise falls evenly aft: lean is within 4 deg of 18 between 22 and 14 deg. */
    @Test
    void exact_leanBoundsTheRegionOfAWarpedV() {
        Region region = only(Boats.warpedV(28, 12), task(0.6, Boats.FLUSH)).regions().get(0);
        double fore = tangent(28);
        double slope = (tangent(12) - fore) / 6;
        // a hyperbolic skin has under a rectangle the tangent plane of its centre as best plane
        assertEquals((tangent(22) - fore) / slope, least(region, PlanPoint::x), 1e-3);
        assertEquals((tangent(14) - fore) / slope, most(region, PlanPoint::x), 1e-3);
    }

    private static double tangent(double degrees) {
        return Math.tan(Math.toRadians(degrees));
    }

    @Test
    void exact_noRegion_theNearestPlaceIsShown() {
        SitingTask steep = Boats.task(0.5, 0.300, 0.140, 40, Boats.FLUSH);
        MountSiting siting = only(Boats.prismaticV(20), steep);
        assertTrue(siting.regions().isEmpty() && siting.sites().isEmpty());
        Site nearest = siting.nearest().orElseThrow();
        assertFalse(nearest.feasible());
        assertEquals("lean of the element", nearest.governing().orElseThrow().name());
        assertEquals(5, nearest.governing().orElseThrow().utilisation(), 1e-6);
    }

    /** With no water under it nothing can be the nearest by utilisation: then the least shortfall is. */
    @Test
    void exact_noWater() {
        Site nearest = only(Boats.prismaticV(20), task(-0.2, Boats.FLUSH)).nearest().orElseThrow();
        assertEquals("depth of the face at rest", nearest.governing().orElseThrow().name());
        assertEquals(Double.POSITIVE_INFINITY, nearest.governing().orElseThrow().utilisation());
    }

    @Test
    void exact_aBodyLongerThanTheBoatHasNoPlace() {
        MountSiting siting = only(Boats.prismaticV(20), Boats.task(0.5, 7, 0.140, 18, Boats.FLUSH));
        assertTrue(siting.regions().isEmpty() && siting.sites().isEmpty() && siting.nearest().isEmpty());
    }

    /** Twenty strips where waves of the bottom run level enough: the eight largest are kept. */
    @Test
    void law_theLargestEightRegionsAreKept() {
        MountSiting siting = only(Boats.waves(), Boats.task(0.6, 0.100, 0.060, 18, Boats.FLUSH));
        assertEquals(8, siting.regions().size());
        assertEquals(8, siting.sites().size());
        for (int i = 1; i < 8; i++) {
            assertTrue(siting.regions().get(i).area() <= siting.regions().get(i - 1).area());
        }
    }
}
