package org.garboard.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.garboard.craft.Drive;
import org.garboard.craft.Sides;
import org.garboard.craft.SoundBeam;
import org.garboard.craft.TransducerDetails;
import org.garboard.handling.Support;
import org.garboard.handling.Supports;
import org.garboard.hull.Hull;
import org.garboard.inside.Inside;
import org.garboard.inside.InsideDatum;
import org.garboard.inside.LaidInside;
import org.garboard.inside.Room;
import org.garboard.inside.Seen;
import org.garboard.inside.Span;
import org.garboard.mount.Check;
import org.garboard.mount.FairedThroughHull;
import org.garboard.mount.InHull;
import org.garboard.mount.Installation;
import org.garboard.mount.LimitName;
import org.garboard.mount.Limits;
import org.garboard.mount.Mount;
import org.garboard.mount.PocketWish;
import org.garboard.mount.Surroundings;
import org.garboard.mount.TransomMount;
import org.garboard.mount.Verdict;
import org.garboard.mount.water.BottomWater;
import org.garboard.skin.HullSkin;
import org.garboard.skin.Layup;
import org.garboard.skin.SkinMaterial;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Places judged by what a job tells beside the table: supports, rooms, skin, drive. A wedge of 20 deg, 6 m long. */
class ToldPlacesTest {
    private static final Hull HULL = Boats.prismaticV(20);
    private static final TransducerDetails TWO = new TransducerDetails(List.of(
        new SoundBeam(50e3, Angle.ofDegrees(30), Angle.ofDegrees(30))), Optional.empty(), Optional.empty(), Optional.of(0.120));

    private static Surroundings around(SkinMaterial material, Layup layup, Optional<LaidInside> inside, Optional<Supports> supports, Optional<Drive> drive) {
        return new Surroundings(HULL.foot(), Optional.of(new HullSkin(material, Optional.of(layup), List.of(), Optional.empty(), List.of())), inside,
            supports, drive, BottomWater.UNTOLD, Optional.empty());
    }

    private static Surroundings bare() {
        return around(SkinMaterial.SOLID_GLASS, new Layup.Whole(0.008), Optional.empty(), Optional.empty(), Optional.empty());
    }

    private static SitingTask task(double inclination, Surroundings around, Limits limits, Mount... mounts) {
        SitingTask task = Boats.task(0.5, 0.120, 0.080, inclination, mounts);
        return new SitingTask(task.draught(), task.installation().with(TWO).within(limits), task.mounts(), task.mark(), task.features(), around);
    }

    private static Check check(Site site, String name) {
        return site.checks().stream().filter(check -> check.name().startsWith(name)).findFirst().orElseThrow();
    }

    /** A bunk to port from 1 to 4 m ahead of the transom, 0.3 to 0.5 m out: a footprint 80 mm wide keeps 50 mm clear, to port alone. */
    @Test
    void exact_aBunkToPort() {
        Supports bunk = new Supports(List.of(new Support(Support.Kind.BUNK, "Bunk", Sides.PORT, 1, 4, Optional.of(new Support.Out(0.3, 0.5)))));
        SitingTask task = task(20, around(SkinMaterial.SOLID_GLASS, new Layup.Whole(0.008), Optional.empty(), Optional.of(bunk), Optional.empty()),
            Limits.OWN, Boats.FLUSH);
        Site under = Siting.at(HULL, task, Boats.FLUSH, 3, -0.4);
        assertEquals(Verdict.NOT_MET, check(under, "slings").verdict());
        assertTrue(check(under, "slings").sentence().endsWith("Nearest: trailer bunk (Bunk)."), check(under, "slings").sentence());
        assertEquals(Verdict.MET, check(Siting.at(HULL, task, Boats.FLUSH, 3, 0.4), "slings").verdict());
        assertEquals(160, check(Siting.at(HULL, task, Boats.FLUSH, 3, -0.7), "slings").demand(), 1e-6);
        MountSiting siting = Siting.search(HULL, task).get(0);
        for (Site site : siting.sites()) {
            assertEquals(1, siting.regions().stream().filter(region -> region.surrounds(site.x(), site.y())).count(), "one region holds " + site.x());
        }
        Region square = new Region(List.of(new PlanPoint(0, 0), new PlanPoint(2, 0), new PlanPoint(2, 1), new PlanPoint(0, 1)), List.of(), 2);
        assertTrue(square.surrounds(1, 0.5));
        assertFalse(square.surrounds(1, 1.5) || square.surrounds(1, -0.5) || square.surrounds(3, 0.5) || square.surrounds(-1, 0.5));
        for (Region region : siting.regions()) {
            boolean across = region.outline().stream().anyMatch(point -> point.x() > 2.1 && point.x() < 4.9 && point.y() < -0.26 && point.y() > -0.58);
            assertFalse(region.sides() == Sides.PORT && across, region.toString());
        }
        assertTrue(siting.regions().stream().anyMatch(region -> region.sides() == Sides.STARBOARD));
    }

    /** Looked at 1 to 3 m ahead of the transom's inside; a fuel tank there on the starboard side. Elsewhere nothing is known. */
    @Test
    void law_fuelRefusesAndWhatNobodySawStaysOpen() {
        Inside inside = new Inside(List.of(new InsideDatum.Transom("transom", 0.05)),
            List.of(new Room(Room.Kind.FUEL_TANK, "Tank", "transom", Sides.STARBOARD, new Span(1.5, 2.5), new Span(0.2, 0.6), new Span(0.1, 0.5))),
            List.of(new Seen("transom", new Span(1, 3))));
        SitingTask task = task(20, around(SkinMaterial.SOLID_GLASS, new Layup.Whole(0.008), Optional.of(LaidInside.on(HULL, inside)), Optional.empty(),
            Optional.empty()), Limits.OWN, Boats.FLUSH);
        assertEquals(Verdict.NOT_MET, check(Siting.at(HULL, task, Boats.FLUSH, 4, 0.4), "fuel").verdict());
        assertEquals(Verdict.MET, check(Siting.at(HULL, task, Boats.FLUSH, 4, -0.4), "fuel").verdict());
        Site unseen = Siting.at(HULL, task, Boats.FLUSH, 1.5, 0.4);
        assertEquals(Verdict.NOT_KNOWN, check(unseen, "fuel").verdict());
        assertTrue(check(unseen, "room for hand").sentence().startsWith("Nobody looked inside here"), check(unseen, "room for hand").sentence());
        for (Site site : Siting.search(HULL, task).get(0).sites()) {
            assertTrue(Siting.at(HULL, task, Boats.FLUSH, site.x(), site.y()).feasible());
        }
    }

    /** A stem of 120 mm through 8 mm of skin and 15 mm of block stands 97 mm beyond; held to 100 mm it does not serve. */
    @Test
    void exact_stemAndALimitOfTheJob() {
        Check own = check(Siting.at(HULL, task(20, bare(), Limits.OWN, Boats.FLUSH), Boats.FLUSH, 3, 0.4), "stem");
        assertEquals(97, own.demand(), 1e-6);
        assertEquals(Verdict.MET, own.verdict());
        Limits asked = new Limits(Map.of(LimitName.STEM_BEYOND_SKIN, 0.1));
        Check other = check(Siting.at(HULL, task(20, bare(), asked, Boats.FLUSH), Boats.FLUSH, 3, 0.4), "stem");
        assertEquals(Verdict.NOT_MET, other.verdict());
        assertTrue(other.source().startsWith("from the job; the program's own would be 20.0 mm, our choice"), other.source());
        assertTrue(Siting.search(HULL, task(20, bare(), asked, Boats.FLUSH)).get(0).sites().isEmpty());
    }

    /** Through 8 mm of glass laminate a beam of 50 kHz comes at 20 deg; through a core it does not, wherever it is put. */
    @Test
    void law_inHullOnSolidSkinAlone() {
        InHull mount = new InHull();
        MountSiting solid = Siting.search(HULL, task(0, bare(), Limits.OWN, mount)).get(0);
        assertFalse(solid.sites().isEmpty());
        assertEquals(Verdict.MET, check(solid.sites().get(0), "loss through the skin, 50 kHz").verdict());
        Surroundings cored = around(SkinMaterial.CORED_GLASS, new Layup.Sandwich(0.003, Layup.Core.FOAM, 0.02, 0.003), Optional.empty(), Optional.empty(),
            Optional.empty());
        MountSiting none = Siting.search(HULL, task(0, cored, Limits.OWN, mount)).get(0);
        assertTrue(none.sites().isEmpty());
        assertEquals("loss through the skin", none.nearest().orElseThrow().governing().orElseThrow().name());
    }

    /** One right-handed propeller: to starboard, 380 mm and half the body out; left-handed, the mirror image; a shaft, nowhere. */
    @Test
    void exact_transomMountByTheDownwardBlade() {
        TransomMount mount = new TransomMount();
        for (Drive.Hand hand : List.of(Drive.Hand.RIGHT, Drive.Hand.LEFT)) {
            Surroundings driven = bare().driven(new Drive(Drive.Kind.OUTBOARD, 1, Optional.of(hand), Optional.empty(), Optional.empty()));
            MountSiting siting = Siting.search(HULL, task(0, driven, Limits.OWN, mount)).get(0);
            assertEquals(1, siting.regions().size());
            int side = hand == Drive.Hand.RIGHT ? 1 : -1;
            assertEquals(0.420, siting.regions().get(0).outline().stream().mapToDouble(point -> side * point.y()).min().orElseThrow(), 1e-6);
            assertTrue(siting.sites().stream().allMatch(site -> side * site.y() >= 0.42 && site.x() == 6));
            Site site = siting.sites().get(0);
            assertTrue(Siting.at(HULL, task(0, driven, Limits.OWN, mount), mount, site.x(), site.y()).feasible());
        }
        Surroundings shafts = bare().driven(new Drive(Drive.Kind.SHAFT, 2, Optional.empty(), Optional.empty(), Optional.empty()));
        assertTrue(Siting.search(HULL, task(0, shafts, Limits.OWN, mount)).get(0).sites().isEmpty());
        Site off = Siting.at(HULL, task(0, shafts, Limits.OWN, mount), mount, 3, 0.5);
        assertEquals("This mount hangs on the lower edge of the transom: ask at x = 6.000 m.", check(off, "seat").sentence());
    }

    /** Two engines 0.7 m apart that turn opposite ways, blades down outboard: 380 mm outboard of the outer axes, or nowhere; right-handed both, between them too. */
    @Test
    void exact_transomMountBesideTwoEngines() {
        TransomMount mount = new TransomMount();
        for (Drive.Hand hand : List.of(Drive.Hand.COUNTER_ROTATING, Drive.Hand.RIGHT)) {
            Surroundings driven = bare().driven(new Drive(Drive.Kind.OUTBOARD, 2, Optional.of(hand), Optional.empty(), Optional.empty(), Optional.of(0.7)));
            SitingTask task = task(0, driven, Limits.OWN, mount);
            assertEquals(1000 * (0.84 - 0.35 - 0.04), check(Siting.at(HULL, task, mount, 6, 0.84), "clear of the propeller").demand(), 1e-6);
            assertEquals(Verdict.MET, check(Siting.at(HULL, task, mount, 6, 0.84), "clear of the propeller").verdict());
            assertEquals(Verdict.NOT_MET, check(Siting.at(HULL, task, mount, 6, 0.5), "clear of the propeller").verdict());
            boolean port = check(Siting.at(HULL, task, mount, 6, -0.84), "clear of the propeller").verdict() == Verdict.MET;
            assertEquals(hand == Drive.Hand.COUNTER_ROTATING, port);
        }
        Surroundings untold = bare().driven(new Drive(Drive.Kind.OUTBOARD, 2, Optional.of(Drive.Hand.RIGHT), Optional.empty(), Optional.empty()));
        Check open = check(Siting.at(HULL, task(0, untold, Limits.OWN, mount), mount, 6, 0.84), "clear of the propeller");
        assertEquals(Verdict.NOT_KNOWN, open.verdict());
        assertEquals("How far apart the 2 engines stand is not told: keep 380 mm from the axis of each.", open.sentence());
    }

    /** A pocket beside the keel is judged on its own side: by a tank to starboard alone, and by the rabbet that it must keep clear of. */
    @Test
    void exact_aPocketBesideTheKeelOnItsOwnSide() {
        Inside inside = new Inside(List.of(new InsideDatum.Transom("transom", 0.05)),
            List.of(new Room(Room.Kind.FUEL_TANK, "Tank", "transom", Sides.STARBOARD, new Span(1.5, 2.5), new Span(0.2, 0.6), new Span(0.1, 0.5))),
            List.of(new Seen("transom", new Span(0.5, 4.5))));
        Surroundings around = around(SkinMaterial.SOLID_GLASS, new Layup.Whole(0.008), Optional.of(LaidInside.on(HULL, inside)), Optional.empty(), Optional.empty());
        for (int side : List.of(1, -1)) {
            SitingTask task = beside(task(0, around, Limits.OWN, Boats.POCKET), side * 0.4);
            Site site = Siting.at(HULL, task, Boats.POCKET, 4, side * 0.4);
            assertEquals(side * 0.4, site.y(), 1e-12);
            assertEquals(side > 0 ? Verdict.NOT_MET : Verdict.MET, check(site, "fuel").verdict());
        }
        Hull keeled = Boats.deepKeel(20);
        SitingTask task = beside(task(0, bare(), Limits.OWN, Boats.POCKET), -0.5);
        double inner = 0.5 - Boats.POCKET.footprint(task.installation()).width() / 2 - 0.15;
        assertEquals(1000 * inner / Math.cos(Math.toRadians(20)), check(Siting.at(keeled, task, Boats.POCKET, 3, -0.5), "room to the keel line").demand(), 1e-3);
        assertTrue(Siting.search(keeled, task).get(0).nearest().isPresent() || !Siting.search(keeled, task).get(0).sites().isEmpty());
    }

    private static SitingTask beside(SitingTask task, double aside) {
        PocketWish wish = task.installation().pocket().aside(aside);
        Installation installation = new Installation(task.installation().transducer(), wish).with(TWO);
        return new SitingTask(task.draught(), installation, task.mounts(), task.mark(), task.features(), task.around());
    }

    /** A block sets an upright element level; an inclined one looks aside. Its high side is that of the wedge. */
    @Test
    void exact_fairingBlockOnAWedge() {
        FairedThroughHull mount = new FairedThroughHull();
        SitingTask task = task(0, bare(), Limits.OWN, mount);
        double width = task.installation().block().width();
        double tangent = Math.tan(Math.toRadians(20));
        double face = Math.max(0.006 + width / 2 * tangent, 0.060 + 0.010 + 0.040 * tangent);
        Site site = Siting.at(HULL, task, mount, 3, 0.5);
        assertEquals(1000 * (face + width / 2 * tangent), check(site, "high side").demand(), 1e-6);
        assertEquals(Verdict.NOT_MET, check(Siting.at(HULL, task(20, bare(), Limits.OWN, mount), mount, 3, 0.5), "lean").verdict());
    }
}
