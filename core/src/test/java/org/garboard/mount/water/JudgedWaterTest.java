package org.garboard.mount.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.RunningSpeed;
import org.garboard.craft.Sides;
import org.garboard.craft.SoundBeam;
import org.garboard.craft.Transducer;
import org.garboard.craft.TransducerDetails;
import org.garboard.flow.attitude.AtSpeed;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.attitude.Basis;
import org.garboard.flow.attitude.Regime;
import org.garboard.flow.attitude.StagnationLine;
import org.garboard.flow.cavitation.Inception;
import org.garboard.flow.cavitation.Suction;
import org.garboard.flow.layer.Layer;
import org.garboard.flow.layer.LayerLaw;
import org.garboard.flow.planing.Prism;
import org.garboard.flow.planing.PrismRun;
import org.garboard.flow.planing.Stream;
import org.garboard.flow.shadow.EveryWake;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.flow.shadow.Shadow;
import org.garboard.flow.water.Water;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.mount.Check;
import org.garboard.mount.FairedThroughHull;
import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.InHull;
import org.garboard.mount.Installation;
import org.garboard.mount.LaidBottom;
import org.garboard.mount.LimitName;
import org.garboard.mount.Limits;
import org.garboard.mount.Mount;
import org.garboard.mount.PocketWish;
import org.garboard.mount.Surroundings;
import org.garboard.mount.TransomMount;
import org.garboard.mount.Verdict;
import org.garboard.siting.Boats;
import org.garboard.siting.Mark;
import org.garboard.siting.Site;
import org.garboard.siting.Siting;
import org.garboard.siting.SitingTask;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** A wedge of 20 deg, 6 m long, planing at attitudes that are given: the water meets keel and chine where the test says. */
class JudgedWaterTest {
    private static final Hull HULL = Boats.prismaticV(20);
    private static final Water SEA = Water.sea(15);
    private static final double KNOT = 1852 / 3600.0;
    private static final double KNOTS = 30;
    private static final double SPEED = KNOTS * KNOT;
    private static final Transducer BODY = new Transducer("body", 0.12, 0.08, 0.06, 0, 0.02, Angle.ofDegrees(20));

    /** Water that meets the keel at an x and the chine 2 m abaft of it, trimmed by so much, level half a metre up at the transom. */
    private static Attitude.Planes planes(double keel, double trimDeg) {
        PrismRun run = new PrismRun(new Prism(2, Angle.ofDegrees(20)), Stream.of(SEA, SPEED), Angle.ofDegrees(trimDeg), 2, SPEED, 0, 0, 0, 0);
        return new Attitude.Planes(SPEED, Basis.WORKED_OUT, Angle.ofDegrees(trimDeg), 6, new WaterSurface(0.5, 6, Angle.ofDegrees(trimDeg)),
            new StagnationLine(List.of(Vector2D.of(keel, 0), Vector2D.of(keel + 2, 1))), run, Optional.empty(), List.of());
    }

    private static Attitude unknown(String why) {
        return new Attitude.NotKnown(SPEED, Regime.OUTSIDE, why);
    }

    private static AtSpeed at(Attitude middle, Attitude... ends) {
        return new AtSpeed(new RunningSpeed("top", KNOTS, Optional.empty()), middle,
            List.of(ends).stream().map(end -> new AtSpeed.End("end", 1000, end)).toList());
    }

    private static SitingTask task(AtSpeed at, List<LaidFeature> laid, Mount mount, Limits limits) {
        BottomFeatures features = new BottomFeatures(laid, BottomFeatures.FeatureList.GIVEN);
        BottomWater water = RunningWater.of(HULL, SEA, List.of(at)).over(laid);
        Surroundings around = new Surroundings(HULL.foot(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), water,
            Optional.of(new LaidBottom(HULL, features)));
        TransducerDetails details = new TransducerDetails(List.of(new SoundBeam(50e3, Angle.ofDegrees(30), Angle.ofDegrees(30))), Optional.empty(),
            Optional.empty(), Optional.empty());
        Installation installation = new Installation(BODY, new PocketWish(OptionalDouble.empty(), 0.005, 8)).with(details).within(limits);
        return new SitingTask(0.5, installation, List.of(mount), Mark.FIVE_MILLIMETRES, features, around);
    }

    private static Check check(AtSpeed at, List<LaidFeature> laid, Mount mount, double x, double y, String name) {
        return check(at, laid, mount, Limits.OWN, x, y, name);
    }

    private static Check check(AtSpeed at, List<LaidFeature> laid, Mount mount, Limits limits, double x, double y, String name) {
        Site site = Siting.at(HULL, task(at, laid, mount, limits), mount, x, y);
        return site.checks().stream().filter(check -> check.name().startsWith(name)).findFirst()
            .orElseThrow(() -> new AssertionError(name + " among " + site.checks().stream().map(Check::name).toList()));
    }

    private static final Mount FLUSH = new FlushThroughHull();

    /** At y = 0.25 the line lies half a metre abaft of the keel's: the face's forward edge is 4 - 0.06 - 1.5 m behind it, a beam is 2 m. */
    @Test
    void exact_wetByTheStagnationLine() {
        Check check = check(at(planes(1, 4)), List.of(), FLUSH, 4, 0.25, "wet at top");
        assertEquals((4 - 0.06 - 1.5) / 2, check.demand(), 1e-9);
        assertEquals(Verdict.MET, check.verdict());
        assertEquals(KNOTS, check.knots().orElseThrow());
        assertEquals(Verdict.NOT_MET, check(at(planes(1, 4)), List.of(), FLUSH, 1.7, 0.25, "wet at top").verdict());
        assertEquals(check.demand(), check(at(planes(1, 4)), List.of(), FLUSH, 4, -0.25, "wet at top").demand(), 0);
    }

    /** The worst end that is known governs; an end without a method leaves open what the others keep, and saves nothing that they do not. */
    @Test
    void law_everyKnownEndIsJudged() {
        assertEquals((4 - 0.06 - 3.5) / 2, check(at(planes(1, 4), planes(3, 5), planes(2, 3)), List.of(), FLUSH, 4, 0.25, "wet at top").demand(), 1e-9);
        Check open = check(at(planes(1, 4), unknown("no method there")), List.of(), FLUSH, 4, 0.25, "wet at top");
        assertEquals(Verdict.NOT_KNOWN, open.verdict());
        assertTrue(open.sentence().startsWith("Not worked out, end: no method there. As far as it is known: The place runs in solid water."), open.sentence());
        assertEquals(Verdict.NOT_MET, check(at(planes(3.8, 4), unknown("no method there")), List.of(), FLUSH, 4, 0.25, "wet at top").verdict());
        Check none = check(at(unknown("nothing"), unknown("nothing")), List.of(), FLUSH, 4, 0.25, "wet at every speed at top");
        assertEquals(Verdict.NOT_KNOWN, none.verdict());
        assertTrue(none.sentence().startsWith("Not worked out, at the mean load and trim and end: nothing."), none.sentence());
    }

    /** The layer after a run of 2.5 m at 30 kn, as the law has it; the least run gives none, dry places have none. */
    @Test
    void exact_layerByTheRun() {
        Layer layer = ((LayerLaw.Known) LayerLaw.USUAL.after(2.5, SPEED, SEA)).layer();
        Check check = check(at(planes(1, 4)), List.of(), FLUSH, 4, 0.25, "boundary layer at top");
        assertEquals(1000 * layer.thickness(), check.demand(), 1e-6);
        assertTrue(check.sentence().endsWith("in a layer of " + Math.round(1000 * layer.thickness()) + " mm at 30 kn, at the mean load and trim."), check.sentence());
        FairedThroughHull block = new FairedThroughHull();
        Installation installation = task(at(planes(1, 4)), List.of(), block, Limits.OWN).installation();
        Check proud = check(at(planes(1, 4)), List.of(), block, 4, 0.25, "face clear of the layer");
        double width = installation.block().width();
        double tangent = Math.tan(Math.toRadians(20));
        double face = Math.max(0.006 + width / 2 * tangent, 0.06 + 0.010 + 0.04 * tangent);
        assertEquals(face / layer.clearHeight(), proud.demand(), 1e-9);
    }

    /** Below the speed from which layer and cavitation are judged they are not asked; the job may set it. */
    @Test
    void law_judgedFromASpeed() {
        Limits later = new Limits(Map.of(LimitName.JUDGED_FROM, 31.0));
        Site site = Siting.at(HULL, task(at(planes(1, 4)), List.of(), FLUSH, later), FLUSH, 4, 0.25);
        assertTrue(site.checks().stream().noneMatch(check -> check.name().startsWith("boundary") || check.name().startsWith("cavitation")));
        assertTrue(site.checks().stream().anyMatch(check -> check.name().startsWith("wet")));
    }

    /**
     * The bead's inception by the textbook's formula, at the depth of the highest skin under the face, in the slow water at its height
     * by wall and wake, as trim tells it of a place; the seventh-power profile is some 12 % kinder there, and not used.
     */
    @Test
    void exact_beadCavitatesByItsDepth() {
        Check check = check(at(planes(1, 4)), List.of(), FLUSH, 4, 0.25, "cavitation at the bead");
        double z = (0.25 + 0.04 * Math.cos(Math.toRadians(20))) * Math.tan(Math.toRadians(20));
        WaterSurface surface = new WaterSurface(0.5, 6, Angle.ofDegrees(4));
        double depth = (surface.at(4) - z) * Math.cos(Math.toRadians(4));
        double boils = new Inception(SEA, depth).speed(new Suction.RoundedEdge(0.0005, 0.005).least());
        Layer layer = ((LayerLaw.Known) LayerLaw.USUAL.after(2.5, SPEED, SEA)).layer();
        assertEquals(boils / layer.velocityAt(0.0005), check.demand(), 1e-6);
        assertTrue(layer.velocityAt(0.0005) > 1.05 * SPEED * Math.pow(0.0005 / layer.thickness(), 1.0 / 7));
    }

    /** Where the water has hardly run there is no slow water that shelters a bead: from no run to the first of the table evenly from 1. */
    @Test
    void law_noShelterWhereTheLayerBegins() {
        SpeedInLayer within = new SpeedInLayer(LayerAlong.layers(SPEED, SEA, 6));
        assertEquals(1, within.slowed(1e-9, 0.0005), 1e-6);
        double first = ((LayerLaw.Known) LayerLaw.USUAL.after(0.1, SPEED, SEA)).layer().velocityAt(0.0005) / SPEED;
        assertEquals((1 + first) / 2, within.slowed(0.05, 0.0005), 1e-9);
        for (double run = 0.1; run < 6; run += 0.07) {
            double exact = ((LayerLaw.Known) LayerLaw.USUAL.after(run, SPEED, SEA)).layer().velocityAt(0.0005) / SPEED;
            assertEquals(exact, within.slowed(run, 0.0005), 0.01, "run " + run);
        }
        assertEquals(1, within.slowed(2, 0.5), 0, "outside the layer");
    }

    /** Of a band's lines the aftermost at each half-breadth, as far out as all reach; none where an end alone floats or nothing is known. */
    @Test
    void exact_solidFromTheAftermostLine() {
        Attitude.Planes steep = planes(2, 4);
        Attitude.Planes flat = new Attitude.Planes(SPEED, Basis.WORKED_OUT, Angle.ofDegrees(3), 6, steep.water(),
            new StagnationLine(List.of(Vector2D.of(1, 0), Vector2D.of(5, 0.8))), steep.run(), Optional.empty(), List.of());
        StagnationLine line = WaterAtSpeed.of(HULL, SEA, at(steep, flat)).solidFrom().orElseThrow();
        assertEquals(0.8, line.outermost(), 1e-12);
        assertEquals(2, line.atKeel(), 1e-12);
        assertEquals(5, line.aftermost(), 1e-12);
        assertEquals(Optional.empty(), WaterAtSpeed.of(HULL, SEA, at(unknown("nothing"))).solidFrom());
        assertEquals(steep.line(), WaterAtSpeed.of(HULL, SEA, at(steep, unknown("nothing"))).solidFrom().orElseThrow());
    }

    /** Two speeds, at one of which the fitting is dry: its wake is one figure all the same, that of the speed at which it is wet. */
    @Test
    void law_wakesTogether() {
        List<LaidFeature> laid = List.of(intake(1, 0.5, Sides.BOTH, 0.05), intake(3.5, 0.3, Sides.PORT, 0.05));
        BottomWater water = RunningWater.of(HULL, SEA, List.of(at(planes(0, 4)), at(planes(1.5, 4)))).over(laid);
        List<EveryWake> wakes = water.wakesTogether();
        assertEquals(2, wakes.size());
        for (EveryWake wake : wakes) {
            Shadow one = water.wakes().stream().flatMap(each -> each.shadows().stream())
                .filter(shadow -> shadow.feature().cover().equals(wake.feature().cover())).findFirst().orElseThrow();
            assertEquals(one.wake().stream().mapToDouble(PlanRegion::area).sum(), wake.wake().stream().mapToDouble(PlanRegion::area).sum(), 1e-9);
        }
    }

    /** A block boils like half an ellipsoid, its forward half the nose, here of 0.2 m, yawed 5 degrees. */
    @Test
    void exact_blockCavitatesLikeAnEllipsoid() {
        NoseSuction nose = new NoseSuction(0.2, 0.1);
        for (double height : new double[] {0.02, 0.05, 0.1, 0.15}) {
            double least = new Suction.FairingNose(0.4, 0.1, height, Angle.ofDegrees(5)).least();
            assertEquals(-least, nose.at(height), 1e-9, "height " + height);
        }
    }

    /** The integral of thin aerofoils over the slope of the curve that ramps are cut to, its own value at the place taken out and put back in closed form. */
    @Test
    void exact_waterRunsFasterWhereARampBegins() {
        DoubleUnaryOperator slope = t -> 30 * t * t * (1 - t) * (1 - t);
        int pieces = 20_000;
        double fastest = 0;
        for (int k = 1; k < 100; k++) {
            double x = k / 100.0;
            double sum = slope.applyAsDouble(x) * Math.log(x / (1 - x));
            for (int i = 0; i < pieces; i++) {
                double t = (i + 0.5) / pieces;
                sum += (slope.applyAsDouble(t) - slope.applyAsDouble(x)) / (x - t) / pieces;
            }
            fastest = Math.max(fastest, Math.abs(sum) / Math.PI);
        }
        assertEquals(fastest, CavitationAsked.FASTER, 5e-4);
    }

    private static LaidFeature intake(double x, double y, Sides sides, double height) {
        return new LaidFeature("Intake", "intake", sides, List.of(Quad.of(x - 0.1, y - 0.1, x + 0.1, y - 0.1, x + 0.1, y + 0.1, x - 0.1, y + 0.1)),
            Optional.of(height));
    }

    /**
     * A wake of an intake that stands out, half its breadth and 6 degrees to the inner side, one and a half times as much outboard: at
     * 1.4 m abaft of its after edge 0.1 + 0.147 inboard and 0.1 + 0.221 outboard of its middle at 0.5 m.
     */
    @Test
    void exact_wakeOfAnIntake() {
        List<LaidFeature> laid = List.of(intake(2.4, 0.5, Sides.STARBOARD, 0.05));
        double growth = 1.6 * Math.tan(Math.toRadians(6));
        double inner = 0.5 - 0.1 - growth;
        double outer = 0.5 + 0.1 + 1.5 * growth;
        // the face is looked at 60 mm ahead and abaft, and 40 mm to either side
        double slack = 0.03;
        assertEquals(Verdict.NOT_MET, check(at(planes(0, 4)), laid, FLUSH, 3.9, inner - 0.04 + slack, "wake shadow").verdict());
        assertEquals(Verdict.MET, check(at(planes(0, 4)), laid, FLUSH, 3.9, inner - 0.04 - slack, "wake shadow").verdict());
        assertEquals(Verdict.NOT_MET, check(at(planes(0, 4)), laid, FLUSH, 3.9, outer + 0.04 - slack, "wake shadow").verdict());
        assertEquals(Verdict.MET, check(at(planes(0, 4)), laid, FLUSH, 3.9, outer + 0.04 + slack, "wake shadow").verdict());
        assertEquals(Verdict.MET, check(at(planes(0, 4)), laid, FLUSH, 3.9, -0.5, "wake shadow").verdict());
        Check behind = check(at(planes(0, 4)), laid, FLUSH, 3.9, 0.5, "wake shadow");
        assertTrue(behind.sentence().contains("intake \"Intake\""), behind.sentence());
        assertEquals(100, behind.demand(), 1e-9);
    }

    /** A fitting that no water reaches throws no wake; whether it is reached at an end that is not known stays open. */
    @Test
    void law_dryFittingsThrowNoWake() {
        List<LaidFeature> laid = List.of(intake(1, 0.5, Sides.BOTH, 0.05));
        assertEquals(Verdict.NOT_MET, check(at(planes(0, 4)), laid, FLUSH, 4, 0.5, "wake shadow").verdict());
        assertEquals(Verdict.MET, check(at(planes(1.5, 4)), laid, FLUSH, 4, 0.5, "wake shadow").verdict());
        Check open = check(at(planes(1.5, 4), unknown("no method")), laid, FLUSH, 4, 0.5, "wake shadow");
        assertEquals(Verdict.NOT_KNOWN, open.verdict());
        assertTrue(open.sentence().startsWith("Whether intake \"Intake\" is wet is not known at every end of the band"), open.sentence());
    }

    /** Beside every wake, at a speed that is not known at each end of the band, a place is not said to be clear of them. */
    @Test
    void law_noWakeIsMetWhereTheWaterIsNotKnown() {
        List<LaidFeature> laid = List.of(intake(2.4, 0.5, Sides.STARBOARD, 0.05));
        Check open = check(at(planes(0, 4), unknown("no method")), laid, FLUSH, 3.9, -0.5, "wake shadow");
        assertEquals(Verdict.NOT_KNOWN, open.verdict());
        assertEquals("Not known at every end of the band, as \"wet at top, 30 kn\" tells. As far as it is known: No wake of what is listed on the bottom"
            + " reaches the place.", open.sentence());
        assertEquals(Verdict.NOT_MET, check(at(planes(0, 4), unknown("no method")), laid, FLUSH, 3.9, 0.5, "wake shadow").verdict(), "what is known refuses");
    }

    /** Where an end is not known the layer is taken to have run all the way from the bow: no thinner one is believed. */
    @Test
    void exact_noLayerThickerThanFromTheBow() {
        double known = WaterAtSpeed.of(HULL, SEA, at(planes(1, 4))).atMostThick(4, 0.25);
        double open = WaterAtSpeed.of(HULL, SEA, at(planes(1, 4), unknown("no method"))).atMostThick(4, 0.25);
        assertEquals(((LayerLaw.Known) LayerLaw.USUAL.after(2.5, SPEED, SEA)).layer().thickness(), known, 1e-9);
        assertEquals(((LayerLaw.Known) LayerLaw.USUAL.after(4, SPEED, SEA)).layer().thickness(), open, 1e-9);
    }

    /** A flush fitting's wake is half gone half-way to where it has faded: 100 of its widths of 0.2 m are 20 m. */
    @Test
    void exact_aFlushFittingsWakeFades() {
        List<LaidFeature> laid = List.of(intake(1, 0.5, Sides.BOTH, 0.0));
        Check check = check(at(planes(-1, 4)), laid, FLUSH, 4, 0.5, "wake shadow");
        assertEquals(100 * (1 - (4 - 0.06 - 0.9) / 20), check.demand(), 1, "of the forward edge, within half a rectangle of lines");
    }

    /** Looked at under way: water, tilt and wakes, and no layer. */
    @Test
    void law_transomMountsAndInHullAskOfTheWater() {
        for (Mount mount : List.of(new TransomMount(), new InHull())) {
            double x = mount instanceof TransomMount ? 6 : 4;
            Site site = Siting.at(HULL, task(at(planes(1, 4)), List.of(intake(2, 0.4, Sides.BOTH, 0.05)), mount, Limits.OWN), mount, x, 0.5);
            List<String> names = site.checks().stream().map(Check::name).toList();
            assertTrue(names.contains("wet at top, 30 kn") && names.contains("wake shadow at top, 30 kn"), names.toString());
            assertTrue(names.stream().noneMatch(name -> name.startsWith("boundary layer") || name.startsWith("face clear")), names.toString());
        }
        double run = 6 - (1 + 2 * 0.5);
        assertEquals(run / 2, check(at(planes(1, 4)), List.of(), new TransomMount(), 6, 0.5, "wet at top").demand(), 1e-9);
    }

    /** The wedge's keel is its lowest line: a face hung by h at y stands y tan 20 - h above it. */
    @Test
    void exact_faceAboveTheKeel() {
        FairedThroughHull block = new FairedThroughHull();
        double tangent = Math.tan(Math.toRadians(20));
        double width = task(at(planes(0, 4)), List.of(), block, Limits.OWN).installation().block().width();
        double face = Math.max(0.006 + width / 2 * tangent, 0.06 + 0.010 + 0.04 * tangent);
        Check check = check(at(planes(0, 4)), List.of(), block, 4, 0.6, "face above");
        assertEquals(1000 * (0.6 * tangent - face), check.demand(), 1e-6);
        assertEquals(Verdict.NOT_MET, check(at(planes(0, 4)), List.of(), block, 4, 0.15, "face above").verdict());
    }

    /** A strut beside a flush face: one rim of the cone of 15 degrees half angle reaches it where it hangs deep enough, and not higher up. */
    @Test
    void law_aStrutInTheBeam() {
        for (double height : new double[] {0.1, 0.6}) {
            LaidFeature strut = new LaidFeature("Strut", "strut", Sides.STARBOARD,
                List.of(Quad.of(3.9, 0.62, 4.1, 0.62, 4.1, 0.66, 3.9, 0.66)), Optional.of(height));
            Check check = check(at(planes(0, 4)), List.of(strut), FLUSH, 4, 0.5, "beam clear");
            // the strut's foot stands height - 0.16 tan 20 below the face, and begins 0.08 beyond its rim
            boolean reached = (height - 0.16 * Math.tan(Math.toRadians(20))) * Math.tan(Math.toRadians(15)) > 0.08;
            assertEquals(reached ? Verdict.NOT_MET : Verdict.MET, check.verdict(), "height " + height);
        }
        LaidFeature untold = new LaidFeature("Strut", "strut", Sides.STARBOARD, List.of(Quad.of(3.9, 0.62, 4.1, 0.62, 4.1, 0.66, 3.9, 0.66)), Optional.empty());
        assertEquals("How far \"Strut\" hangs below the skin is not told, and it may stand in the beam. As far as it is known: The beam gets away from keel,"
            + " strakes and fittings.", check(at(planes(0, 4)), List.of(untold), FLUSH, 4, 0.5, "beam clear").sentence());
    }

    /** 300 mm between bodies: one 0.2 m wide at 0.8 m leaves 0.7 - 0.04 - y. */
    @Test
    void exact_roomToAnotherTransducer() {
        LaidFeature other = new LaidFeature("Other", "other transducer", Sides.STARBOARD,
            List.of(Quad.of(3.9, 0.7, 4.1, 0.7, 4.1, 0.9, 3.9, 0.9)), Optional.of(0.0));
        Check check = check(at(planes(0, 4)), List.of(other), FLUSH, 4, 0.3, "room to another transducer");
        assertEquals(360, check.demand(), 1e-6);
        assertEquals(Verdict.NOT_MET, check(at(planes(0, 4)), List.of(other), FLUSH, 4, 0.4, "room to another transducer").verdict());
        assertEquals(Verdict.MET, check(at(planes(0, 4)), List.of(other), FLUSH, 4, -0.8, "room to another transducer").verdict());
    }
}
