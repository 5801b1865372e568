package org.garboard.mount.told;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.acoustics.beam.Disc;
import org.garboard.acoustics.beam.Element;
import org.garboard.appendage.Keel;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.BottomFeatures.FeatureList;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.craft.SoundBeam;
import org.garboard.craft.Transducer;
import org.garboard.craft.TransducerDetails;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;
import org.garboard.inside.Inside;
import org.garboard.inside.InsideDatum;
import org.garboard.inside.LaidInside;
import org.garboard.inside.Room;
import org.garboard.inside.Seen;
import org.garboard.inside.Span;
import org.garboard.mount.Check;
import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.InHull;
import org.garboard.mount.Installation;
import org.garboard.mount.KeelPocket;
import org.garboard.mount.LaidBottom;
import org.garboard.mount.Mount;
import org.garboard.mount.PocketWish;
import org.garboard.mount.Surroundings;
import org.garboard.mount.TransomMount;
import org.garboard.mount.Verdict;
import org.garboard.mount.water.BottomWater;
import org.garboard.siting.Boats;
import org.garboard.siting.Mark;
import org.garboard.siting.Site;
import org.garboard.siting.Siting;
import org.garboard.siting.SitingTask;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** What a body does to what stands beside it, and they to it: a wedge of 20 deg, 6 m long, an element square to the skin. */
class NeighboursTest {
    private static final Hull HULL = Boats.prismaticV(20);
    private static final double RISE = Math.tan(Math.toRadians(20));
    private static final Mount FLUSH = new FlushThroughHull();
    private static final Transducer BODY = new Transducer("body", 0.12, 0.08, 0.06, 0, 0.02, Angle.ofDegrees(20));
    private static final SoundBeam BEAM = new SoundBeam(50e3, Angle.ofDegrees(30), Angle.ofDegrees(30));
    private static final String ROOM = "room to another transducer";

    private static Site at(Hull hull, BottomFeatures features, Optional<LaidInside> inside, TransducerDetails details, Mount mount, double x, double y) {
        Surroundings around = new Surroundings(hull.foot(), Optional.empty(), inside, Optional.empty(), Optional.empty(), BottomWater.UNTOLD,
            Optional.of(new LaidBottom(hull, features)));
        Installation installation = new Installation(BODY, new PocketWish(OptionalDouble.empty(), 0.005, 8)).with(details);
        return Siting.at(hull, new SitingTask(0.5, installation, List.of(mount), Mark.FIVE_MILLIMETRES, features, around), mount, x, y);
    }

    private static TransducerDetails beams(Optional<Double> connector) {
        return new TransducerDetails(List.of(BEAM), Optional.empty(), Optional.empty(), Optional.empty(), connector);
    }

    private static Check beside(LaidFeature other, Mount mount, double y, String name) {
        return check(at(HULL, new BottomFeatures(List.of(other), FeatureList.GIVEN), Optional.empty(), beams(Optional.empty()), mount,
            mount instanceof TransomMount ? 6 : 4, y), name);
    }

    private static Check check(Site site, String name) {
        return site.checks().stream().filter(check -> check.name().startsWith(name)).findFirst()
            .orElseThrow(() -> new AssertionError(name + " among " + site.checks().stream().map(Check::name).toList()));
    }

    private static LaidFeature other(String kind, double inner, double outer, Optional<Double> height) {
        return on(Sides.STARBOARD, kind, inner, outer, height);
    }

    private static LaidFeature on(Sides side, String kind, double inner, double outer, Optional<Double> height) {
        return new LaidFeature("Log", kind, side, List.of(Quad.of(3.9, inner, 4.1, inner, 4.1, outer, 3.9, outer)), height);
    }

    /**
     * The near field of a round face of radius a reaches a^2 / lambda to the last maximum on its axis, and pi times that to where it
     * spreads as from a point (Rayleigh); its main lobe ends where sin = 1.22 lambda / d.
     */
    @Test
    void exact_nearFieldAndLobeOfARoundFace() {
        Element face = Element.of(BEAM, SoundAsked.SEA_SPEED);
        double wavelength = SoundAsked.SEA_SPEED / 50e3;
        double radius = ((Disc) face).diameter() / 2;
        assertEquals(radius * radius / wavelength, ((Disc) face).lastAxialMaximum() + wavelength / 4, 1e-12);
        assertEquals(Math.PI * radius * radius / wavelength, face.nearField(), 1e-12);
        assertEquals(1.2197 * wavelength / (2 * radius), Math.sin(face.firstNull(Element.Plane.ATHWART).orElseThrow().radians()), 1e-4);
    }

    /** Flush at 0.8 m, the other 0.3 m below the skin at 0.1 m: the main lobe asks for as much more as it spreads beyond 300 mm on the way down. */
    @Test
    void exact_theLobePassesWhatHangsLower() {
        Check check = beside(other("other transducer", 0.1, 0.3, Optional.of(0.3)), FLUSH, 0.8, ROOM);
        double drop = 0.7 * RISE + 0.3;
        double lobe = Math.asin(3.831705970207512 / 1.616339948310703 * Math.sin(Math.toRadians(15)));
        assertEquals(1000 * (0.8 - 0.04 - 0.3 - (drop * Math.tan(lobe) - 0.3)), check.demand(), 0.05 * 1000 * 0.4 * (1 - Math.cos(Math.toRadians(20))));
        assertEquals(Verdict.MET, check.verdict());
        assertFalse(check.sentence().contains("near field"), check.sentence());
    }

    @Test
    void law_besideTheNearFieldIsTold() {
        Check check = beside(other("other transducer", 0.72, 0.9, Optional.of(0.2)), FLUSH, 0.3, ROOM);
        double near = Element.of(BEAM, SoundAsked.SEA_SPEED).nearField();
        assertEquals("Another transducer is far enough away. \"Log\" hangs " + Math.round(1000 * (0.2 - 0.42 * RISE))
            + " mm lower, beside the near field, which reaches " + Math.round(1000 * near) + " mm down.", check.sentence());
        Check untold = beside(other("other transducer", 0.72, 0.9, Optional.empty()), FLUSH, 0.3, ROOM);
        assertEquals(Verdict.NOT_KNOWN, untold.verdict());
        assertTrue(untold.sentence().startsWith("How far \"Log\" hangs below the skin is not told."), untold.sentence());
    }

    /** One inside the skin keeps its distance, and throws no wake. */
    @Test
    void law_insideTheSkin() {
        LaidFeature inside = other("transducer inside the skin", 0.7, 0.9, Optional.of(0.0));
        assertEquals(Verdict.NOT_MET, beside(inside, FLUSH, 0.4, ROOM).verdict());
        assertEquals(Verdict.MET, beside(inside, new InHull(), 0.2, ROOM).verdict());
    }

    /** A tab from 0.3 to 0.5 m swings there; a body 80 mm wide keeps 50 mm off. */
    @Test
    void exact_besideATab() {
        LaidFeature tab = new LaidFeature("Tabs", "trim tab", Sides.BOTH, List.of(Quad.of(5.7, 0.3, 6, 0.3, 6, 0.5, 5.7, 0.5)), Optional.empty());
        assertEquals(160, beside(tab, new TransomMount(), 0.7, "clear of the tabs' swing").demand(), 1e-6);
        assertEquals(160, beside(tab, new TransomMount(), -0.7, "clear of the tabs' swing").demand(), 1e-6);
        assertEquals(Verdict.NOT_MET, beside(tab, new TransomMount(), 0.58, "clear of the tabs' swing").verdict());
        assertEquals(Verdict.NOT_MET, beside(tab, new TransomMount(), 0.4, "clear of the tabs' swing").verdict());
        assertEquals(Verdict.NOT_KNOWN, beside(tab, new TransomMount(), 0.7, "room to kick up").verdict());
    }

    /** Behind the transom a level face 80 mm wide hangs 3 mm lower than the V under its inner edge. */
    @Test
    void exact_whatHangsBehindTheTransomIsNotTheLowest() {
        BottomFeatures none = new BottomFeatures(List.of(), FeatureList.GIVEN);
        for (double y : new double[] {0.7, -0.7, 0.05}) {
            Check lowest = check(at(HULL, none, Optional.empty(), beams(Optional.empty()), new TransomMount(), 6, y), "face above the boat's lowest place");
            assertEquals(1000 * (Math.abs(y) - 0.04) * RISE - 3, lowest.demand(), 1e-6);
            assertEquals(Math.abs(y) > 0.06 ? Verdict.MET : Verdict.NOT_MET, lowest.verdict());
        }
    }

    /** A keel 0.3 m deep from a rabbet at 0.15 m, seen from behind the transom by an upright element. */
    @Test
    void exact_aKeelStandsInTheBeamFromBehindTheTransom() {
        Hull hull = Boats.deepKeel(20);
        Keel keel = new Keel("Keel", hull.lines().get(hull.skinLine()), List.of(new Keel.Knee(0, -0.3, 0.15), new Keel.Knee(6, -0.3, 0.15)));
        BottomFeatures features = new BottomFeatures(List.of(), Optional.of(keel), FeatureList.GIVEN);
        for (double y : new double[] {0.25, 0.9}) {
            Check check = check(at(hull, features, Optional.empty(), beams(Optional.empty()), new TransomMount(), 6, y), "beam clear");
            assertEquals(y < 0.5 ? Verdict.NOT_MET : Verdict.MET, check.verdict(), check.sentence());
        }
    }

    /** A keel 0.3 m deep from a rabbet at 0.15 m: the cone of 15 deg about a plumb axis meets it only close by. */
    @Test
    void exact_aKeelBelowTheRabbetStandsInTheBeam() {
        Hull hull = Boats.deepKeel(20);
        Keel keel = new Keel("Keel", hull.lines().get(hull.skinLine()), List.of(new Keel.Knee(0, -0.3, 0.15), new Keel.Knee(6, -0.3, 0.15)));
        BottomFeatures features = new BottomFeatures(List.of(), Optional.of(keel), FeatureList.GIVEN);
        for (double y : new double[] {0.25, 0.6}) {
            Check check = check(at(hull, features, Optional.empty(), beams(Optional.empty()), FLUSH, 4, y), "beam clear");
            boolean reached = (0.3 + (y - 0.15) * RISE) * Math.tan(Math.toRadians(15)) > y - 0.15 - 0.04;
            assertEquals(reached ? Verdict.NOT_MET : Verdict.MET, check.verdict(), "y = " + y);
            assertEquals(reached, check.sentence().contains("the keel"), check.sentence());
        }
        Check untold = check(at(hull, new BottomFeatures(List.of(), FeatureList.GIVEN), Optional.empty(), beams(Optional.empty()), FLUSH, 4, 0.6), "beam clear");
        assertEquals(Verdict.NOT_KNOWN, untold.verdict());
        assertEquals(-0.3, new LaidBottom(hull, features).lowest(), 1e-9);
    }

    /**
     * A face on the centreline whose element leans 20 deg, a beam of 30 deg: from 5 to 35 deg off the plumb line it looks to one side,
     * and a box 300 mm deep that begins 100 mm off the centreline stands in it or not at all, as the body is turned.
     */
    @Test
    void exact_onTheCentrelineTheElementIsTurnedToTheClearSide() {
        for (Optional<Double> height : List.of(Optional.of(0.3), Optional.<Double>empty())) {
            String there = height.isPresent() ? "Turned round, there stands in the beam: Log."
                : "Turned round, it is in doubt: How far \"Log\" hangs below the skin is not told, and it may stand in the beam.";
            Check starboard = beside(on(Sides.STARBOARD, "anode", 0.1, 0.3, height), new KeelPocket(), 0, "beam clear");
            assertEquals(Verdict.MET, starboard.verdict());
            assertEquals(0, starboard.demand());
            assertEquals("The beam gets away from keel, strakes and fittings. Its element is to look to port. " + there, starboard.sentence());
            Check port = beside(on(Sides.PORT, "anode", 0.1, 0.3, height), new KeelPocket(), 0, "beam clear");
            assertEquals(Verdict.MET, port.verdict());
            assertEquals("The beam gets away from keel, strakes and fittings. Its element is to look to starboard. " + there, port.sentence());
        }
    }

    @Test
    void law_whatStandsToBothSidesIsInTheBeamEitherWay() {
        Check both = beside(on(Sides.BOTH, "anode", 0.1, 0.3, Optional.of(0.3)), new KeelPocket(), 0, "beam clear");
        assertEquals(Verdict.NOT_MET, both.verdict());
        assertEquals("Something stands in the beam. In the beam of 30 deg stands: Log. Turned round, there stands: Log.", both.sentence());
        assertEquals("The beam gets away from keel, strakes and fittings. Its element may look to either side.",
            beside(on(Sides.BOTH, "anode", 0.6, 0.8, Optional.of(0.1)), new KeelPocket(), 0, "beam clear").sentence());
        assertEquals(Verdict.NOT_KNOWN, beside(on(Sides.BOTH, "anode", 0.1, 0.3, Optional.empty()), new KeelPocket(), 0, "beam clear").verdict());
    }

    /** Something low to starboard, far lower to port: not met either way, and the side with less in the beam counts on either boat. */
    @Test
    void law_mirroredBoatsAreJudgedAlikeOnTheCentreline() {
        for (double deeper : new double[] {0.1, 0.5}) {
            Check told = twoSided(Sides.STARBOARD, Sides.PORT, deeper);
            Check mirrored = twoSided(Sides.PORT, Sides.STARBOARD, deeper);
            assertEquals(told.demand(), mirrored.demand(), 1e-9);
            assertEquals(told.verdict(), mirrored.verdict());
        }
    }

    private static Check twoSided(Sides one, Sides other, double deeper) {
        List<LaidFeature> both = List.of(on(one, "anode", 0.08, 0.3, Optional.of(0.2)), on(other, "anode", 0.08, 0.3, Optional.of(0.2 + deeper)));
        return check(at(HULL, new BottomFeatures(both, FeatureList.GIVEN), Optional.empty(), beams(Optional.empty()), new KeelPocket(), 4, 0), "beam clear");
    }

    /** A stem of 20 mm goes through a hole of 22 mm (the next saw over 21.5). */
    @Test
    void exact_thePlugPassesTheHole() {
        Transducer stem = new Transducer("body", 0.12, 0.08, 0.06, 0, 0.02, Angle.ofDegrees(20));
        assertEquals(0.02, stem.stemDiameter());
        assertEquals("The thickness of the plug on the cable is not told: measure it, the hole for the stem is 22.0 mm.", plug(Optional.empty()).sentence());
        assertEquals(Verdict.NOT_KNOWN, plug(Optional.empty()).verdict());
        assertEquals("The plug on the cable is 18.0 mm thick, the hole for the stem 22.0 mm: it passes.", plug(Optional.of(0.018)).sentence());
        assertEquals(Verdict.MET, plug(Optional.of(0.022)).verdict());
        assertEquals("The plug on the cable is 25.0 mm thick, the hole for the stem 22.0 mm: it does not pass. A plug that comes off the cable would serve,"
            + " or a hole sleeved to the stem.", plug(Optional.of(0.025)).sentence());
        assertEquals(Verdict.NOT_MET, plug(Optional.of(0.025)).verdict());
    }

    private static Check plug(Optional<Double> connector) {
        return check(at(HULL, BottomFeatures.NOT_LISTED, Optional.empty(), beams(connector), FLUSH, 4, 0.5), "hole large enough");
    }

    /** A block of the body and 40 mm all round, 160 mm wide, beside a limber hole 0.6 m out. */
    @Test
    void exact_aBlockLeavesALimberHoleOpen() {
        Inside told = new Inside(List.of(new InsideDatum.Transom("transom", 0.05)),
            List.of(new Room(Room.Kind.LIMBER_HOLE, "Hole", "transom", Sides.STARBOARD, new Span(1.9, 2), new Span(0.6, 0.65), new Span(0, 0.03))),
            List.of(new Seen("transom", new Span(0, 4))));
        Optional<LaidInside> inside = Optional.of(LaidInside.on(HULL, told));
        assertEquals(120, limber(inside, 0.4).demand(), 1e-6);
        assertEquals(Verdict.NOT_MET, limber(inside, 0.5).verdict());
        assertEquals(Verdict.NOT_KNOWN, check(at(HULL, BottomFeatures.NOT_LISTED, inside, beams(Optional.empty()), FLUSH, 1, 0.4), "limber").verdict());
    }

    private static Check limber(Optional<LaidInside> inside, double y) {
        return check(at(HULL, BottomFeatures.NOT_LISTED, inside, beams(Optional.empty()), FLUSH, 4, y), "limber");
    }
}
