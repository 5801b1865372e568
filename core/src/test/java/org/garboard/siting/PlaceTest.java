package org.garboard.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.garboard.hull.Hull;
import org.garboard.mount.Check;
import org.garboard.mount.Mount;
import org.garboard.mount.Verdict;
import org.junit.jupiter.api.Test;

/** Checks of single places on hulls made from tables. */
class PlaceTest {
    private static final SitingTask TASK = Boats.task(0.5, 0.300, 0.140, 18, Boats.FLUSH, Boats.POCKET);

    private static final SitingTask UPRIGHT = Boats.task(0.5, 0.300, 0.140, 0, Boats.POCKET);

    private static Check check(Site site, String name) {
        return site.checks().stream().filter(check -> check.name().equals(name)).findFirst().orElseThrow();
    }

    /** 20 deg V at girth 0.5 m: lean 2 deg, rooms by the girth, immersion of the footprint's upper edge. */
    @Test
    void exact_flushOnAPrismaticV() {
        double cosine = Math.cos(Math.toRadians(20));
        double sine = Math.sin(Math.toRadians(20));
        Site site = Siting.at(Boats.prismaticV(20), TASK, Boats.FLUSH, 3, 0.5 * cosine);
        assertEquals(0.5 * sine, site.z(), 1e-9);
        assertEquals(0.5, site.girth(), 1e-9);
        assertEquals(Math.toRadians(20), site.deadrise(), 1e-9);
        assertEquals(0, site.slope(), 1e-9);
        assertEquals(0, check(site, "flatness under the footprint").demand(), 1e-6);
        assertEquals(2, check(site, "lean of the element").demand(), 1e-6);
        assertEquals(430, check(site, "room to the keel line").demand(), 1e-6);
        assertEquals(1000 / cosine - 570, check(site, "room to the chine").demand(), 1e-6);
        assertEquals(2850, check(site, "room to the ends of the table").demand(), 1e-6);
        assertEquals(500 - 570 * sine, check(site, "depth of the face at rest").demand(), 1e-6);
        Check knuckle = check(site, "room to other knuckles");
        assertEquals(Verdict.MET, knuckle.verdict());
        assertTrue(Double.isNaN(knuckle.demand()));
        assertEquals("lean of the element", site.governing().orElseThrow().name());
        assertEquals(0.5, site.governing().orElseThrow().utilisation(), 1e-6);
        assertTrue(site.feasible());
        assertEquals(9, site.notKnown().size());
        assertTrue(site.window().isEmpty());
    }

    /**
     * Floor 310 x 150 mm: rise 75 tan 20 = 27.298 mm, depth 88 mm, walls 60 mm high that lean out 5 deg between radii of
     * 10 and 5 mm: 60 tan 5 + 15 tan 42.5 = 18.994 mm; then ramps 8 (88 - 60) = 224 mm each.
     */
    @Test
    void exact_pocketOnAPrismaticV() {
        double tangent = Math.tan(Math.toRadians(20));
        Site site = Siting.at(Boats.prismaticV(20), UPRIGHT, Boats.POCKET, 3, 0);
        assertEquals(0, check(site, "lean of the element").demand(), 1e-9);
        assertEquals(75 * tangent, check(site, "depth lost to the V").demand(), 1e-6);
        assertEquals(60, check(site, "wall height beside the body").demand(), 1e-6);
        assertEquals(0, check(site, "straightness of the keel line").demand(), 1e-6);
        assertEquals(0, check(site, "slope fore and aft").demand(), 1e-6);
        assertEquals(925 / Math.cos(Math.toRadians(20)), check(site, "room to the chine").demand(), 1e-6);
        double wall = 60 * Math.tan(Math.toRadians(5)) + 15 * Math.tan(Math.toRadians(42.5));
        assertEquals(3000 - 155 - wall - 224, check(site, "room to the ends of the table").demand(), 1e-6);
        assertEquals(500 - 28, check(site, "depth of the face at rest").demand(), 1e-6);
        assertEquals(0, site.deadrise());
        assertEquals(0, site.girth());
        assertTrue(site.feasible());
        assertEquals(9, site.notKnown().size());
    }

    /** The floor of a pocket is level: an element that leans 18 deg in its housing looks 18 deg to one side. */
    @Test
    void exact_inclinedElementInAPocket() {
        Site site = Siting.at(Boats.prismaticV(20), TASK, Boats.POCKET, 3, 0);
        assertEquals(18, check(site, "lean of the element").demand(), 1e-9);
        assertEquals(Verdict.NOT_MET, check(site, "lean of the element").verdict());
        assertEquals("lean of the element", site.governing().orElseThrow().name());
        assertEquals(18 / 4.0, site.governing().orElseThrow().utilisation(), 1e-9);
    }

    /** A knuckle 100 mm outboard of the footprint's edge, then one that the footprint straddles. */
    @Test
    void exact_roomToAKnuckle() {
        Hull hull = Boats.brokenV(20, 14);
        double knuckle = 0.5 / Math.cos(Math.toRadians(20));
        Site inside = Siting.at(hull, TASK, Boats.FLUSH, 3, (knuckle - 0.170) * Math.cos(Math.toRadians(20)));
        assertEquals(100, check(inside, "room to other knuckles").demand(), 1e-6);
        Site outside = Siting.at(hull, TASK, Boats.FLUSH, 3, 0.5 + 0.170 * Math.cos(Math.toRadians(14)));
        assertEquals(100, check(outside, "room to other knuckles").demand(), 1e-6);
        Site across = Siting.at(hull, TASK, Boats.FLUSH, 3, 0.5);
        assertEquals(Verdict.NOT_MET, check(across, "room to other knuckles").verdict());
        assertTrue(check(across, "room to other knuckles").demand() < 0);
        assertFalse(across.feasible());
    }

    /** Through a table of buttocks: sagittas of arc and sphere; the surface is a cubic fit to 0.01 mm or better. */
    @Test
    void exact_flatnessOfRoundBottoms() {
        double cylinder = 1000 * (3 - Math.sqrt(9 - 0.07 * 0.07));
        double reach = Math.hypot(0.15, 0.07);
        double sphere = 1000 * (8 - Math.sqrt(64 - reach * reach));
        for (double y = 0.2; y < 0.85; y += 0.13) {
            assertEquals(cylinder, check(Siting.at(Boats.cylinder(3), TASK, Boats.FLUSH, 3, y),
                "flatness under the footprint").demand(), 0.01, "cylinder " + y);
            assertEquals(sphere, check(Siting.at(Boats.sphere(8), TASK, Boats.FLUSH, 3.4, y),
                "flatness under the footprint").demand(), 0.01, "sphere " + y);
        }
    }

    @Test
    void law_portEqualsStarboard() {
        Hull hull = Boats.thirtyNineFeet();
        for (double x = 0.5; x < 11.8; x += 0.73) {
            for (double y = 0.05; y < 1.4; y += 0.19) {
                Site starboard = Siting.at(hull, TASK, Boats.FLUSH, x, y);
                Site port = Siting.at(hull, TASK, Boats.FLUSH, x, -y);
                assertEquals(starboard.checks(), port.checks());
                assertEquals(starboard.girth(), port.girth());
                assertEquals(starboard.deadrise(), port.deadrise());
                assertEquals(-starboard.y(), port.y());
            }
        }
    }

    @Test
    void badInput_offTheSkin() {
        Hull hull = Boats.prismaticV(20);
        for (double[] place : new double[][] {{3, 1.5}, {-1, 0.3}, {5.9, 0.3}, {7, 0.3}}) {
            Site site = Siting.at(hull, TASK, Boats.FLUSH, place[0], place[1]);
            Check seat = check(site, "seat on the skin");
            assertEquals(Verdict.NOT_MET, seat.verdict());
            assertEquals(Double.POSITIVE_INFINITY, seat.utilisation());
            assertEquals("The footprint or its ramps leave the skin of the table of offsets here;"
                + " nothing can be measured.", seat.sentence());
            assertFalse(site.feasible());
            assertEquals("seat on the skin", site.governing().orElseThrow().name());
            assertEquals(site.checks().size() - 1, site.notKnown().size());
        }
    }

    @Test
    void badInput_aPocketBesideTheKeel() {
        Site site = Siting.at(Boats.prismaticV(20), TASK, Boats.POCKET, 3, 0.2);
        assertEquals("The pocket's middle lies as far aside as the job tells: ask at y = 0.000 m.",
            check(site, "seat on the skin").sentence());
        assertFalse(site.feasible());
    }

    /** The same checks in the same order wherever a mount is asked about. */
    @Test
    void law_theListOfChecksIsTheMounts() {
        Hull hull = Boats.prismaticV(20);
        for (Mount mount : List.of(Boats.FLUSH, Boats.POCKET)) {
            List<String> on = Siting.at(hull, TASK, mount, 3, 0).checks().stream().map(Check::name).toList();
            List<String> off = Siting.at(hull, TASK, mount, 9, 0).checks().stream().map(Check::name).toList();
            assertEquals(on, off);
        }
    }
}
