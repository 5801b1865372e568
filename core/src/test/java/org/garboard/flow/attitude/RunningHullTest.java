package org.garboard.flow.attitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.craft.Craft;
import org.garboard.craft.Drive;
import org.garboard.craft.FeaturePlace;
import org.garboard.craft.HomeWater;
import org.garboard.craft.RunningSpeed;
import org.garboard.craft.SeaTrial;
import org.garboard.craft.TrimBand;
import org.garboard.craft.Weights;
import org.garboard.flow.attitude.Attitude.ChinesDry;
import org.garboard.flow.attitude.Attitude.Floats;
import org.garboard.flow.attitude.Attitude.NotKnown;
import org.garboard.flow.attitude.Attitude.Planes;
import org.garboard.flow.attitude.Attitude.Stepped;
import org.garboard.flow.doublebody.DoubleBody;
import org.garboard.flow.doublebody.HullFlow;
import org.garboard.flow.doublebody.MeshWish;
import org.garboard.flow.doublebody.Stern;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.flow.steps.AirBehind;
import org.garboard.flow.steps.StepWake;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.hull.SteppedForms;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

class RunningHullTest {
    private static final Hull BOW = PlaningHullTest.warped(1);
    private static final Load LOAD = new Load(4200, 6.6, 0.8, -0.18, Angle.ofDegrees(0));
    private static final double KNOT = 1852 / 3600.0;

    private static RunningHull running(Load load) {
        return loaded(BOW, load);
    }

    private static RunningHull loaded(Hull hull, Load load) {
        return assertInstanceOf(RunningHull.class, RunningHull.of(hull, Optional.empty(), load, Water.sea(15)));
    }

    private static <T extends Attitude> T as(Class<T> kind, Attitude attitude) {
        return assertInstanceOf(kind, attitude, attitude.toString());
    }

    /** Slow she floats, fast she planes, and between there is no number. */
    @Test
    void theRegimesFollowTheSpeed() {
        RunningHull boat = running(LOAD);
        Floats slow = as(Floats.class, boat.at(3));
        assertEquals(boat.atRest().trim(), slow.trim());
        assertEquals(3 / Math.sqrt(Water.GRAVITY * boat.atRest().length()), slow.froude(), 1e-12);
        assertEquals(Regime.BETWEEN, as(NotKnown.class, boat.at(4.5)).regime());
        Planes fast = as(Planes.class, boat.at(13));
        assertTrue(fast.wettedKeel() > fast.wettedChine() && fast.wettedChine() > 0);
        assertTrue(fast.drag() > 0.08 * LOAD.weight() && fast.drag() < 0.35 * LOAD.weight(), "drag " + fast.drag());
        assertEquals(Regime.OUTSIDE, as(NotKnown.class, boat.at(60)).regime());
    }

    /** The double body at a displacement speed lies in the water as she floats. */
    @Test
    void theDoubleBodyTakesTheFloatedAttitude() {
        Floats slow = as(Floats.class, running(LOAD).at(3));
        HullFlow flow = assertInstanceOf(HullFlow.class,
            DoubleBody.past(BOW, slow.level().orElseThrow(), MeshWish.atMost(400, Stern.CLOSED)));
        double[] stations = {flow.mesh().station(0), flow.mesh().station(flow.mesh().columns())};
        assertEquals(slow.afloat().hull().from(), stations[0], 1e-12);
        assertEquals(slow.afloat().hull().to(), stations[1], 1e-12);
    }

    /** The same speeds, cold or each from the one before. */
    @Test
    void law_aListOfSpeedsFindsEachOfThem() {
        RunningHull boat = running(LOAD);
        List<Double> speeds = List.of(2.0, 11.0, 12.0, 13.0, 15.0, 17.0);
        List<Attitude> all = boat.at(speeds);
        for (int i = 1; i < speeds.size(); i++) {
            Planes one = as(Planes.class, boat.at(speeds.get(i)));
            Planes warm = as(Planes.class, all.get(i));
            assertEquals(one.trim().degrees(), warm.trim().degrees(), 1e-7);
            assertEquals(one.wettedChine(), warm.wettedChine(), 1e-6);
        }
        assertEquals(all, boat.at(speeds));
    }

    /** The spray's region begins on the line, lies ahead of it on the bottom, and ends at the chine. */
    @Test
    void law_sprayLiesAheadOfTheLine() {
        Planes fast = as(Planes.class, running(LOAD).at(13));
        PlanRegion spray = fast.spray().orElseThrow();
        assertTrue(spray.area() > 0);
        for (Vector2D point : spray.outline().points()) {
            assertTrue(point.getY() <= BOW.bottomEdge().y(point.getX()) + 1e-6);
            double onLine = fast.line().x(point.getY());
            assertTrue(Double.isNaN(onLine) || point.getX() <= onLine + 1e-9);
        }
        double y = 0.5 * BOW.bottomEdge().y(fast.line().atChine());
        assertTrue(spray.contains(fast.line().x(y) - 0.02, y));
        assertEquals(false, spray.contains(fast.line().x(y) + 0.02, y));
    }

    /** Measurements stand against what is worked out. */
    @Test
    void law_measurementsOverride() {
        RunningHull boat = running(LOAD);
        Planes own = as(Planes.class, boat.at(13));
        Planes trim = as(Planes.class, boat.at(13, new SeaTrial(25, Optional.of(Angle.ofDegrees(own.trim().degrees() + 0.5)), Optional.empty())));
        assertEquals(own.trim().degrees() + 0.5, trim.trim().degrees(), 1e-9);
        assertEquals(Basis.MEASURED_TRIM, trim.basis());
        assertTrue(trim.wettedKeel() < own.wettedKeel());
        Planes keel = as(Planes.class, boat.at(13, new SeaTrial(25, Optional.empty(), Optional.of(own.wettedKeel() + 0.3))));
        assertEquals(own.wettedKeel() + 0.3, keel.wettedKeel(), 5e-3);
        assertTrue(keel.trim().degrees() < own.trim().degrees());
        Floats floats = as(Floats.class, boat.at(3, new SeaTrial(6, Optional.of(Angle.ofDegrees(1)), Optional.empty())));
        assertEquals(1, floats.trim().degrees(), 1e-12);
        assertEquals(LOAD.mass(), floats.afloat().whole().mass(Water.sea(15).density()), 1e-5);
    }

    @Test
    void badInputIsNamed() {
        assertEquals("speed is 0.0 m/s; it must be more than 0 and less than 200 m/s",
            assertThrows(IllegalArgumentException.class, () -> running(LOAD).at(0)).getMessage());
        assertEquals("speed is -4.0 m/s; it must be more than 0 and less than 200 m/s",
            assertThrows(IllegalArgumentException.class, () -> running(LOAD).at(-4)).getMessage());
        assertTrue(refused(LOAD.withMass(400_000)).startsWith("mass 400000 kg: at a trim of 0.00 deg she floats with at most "));
        assertEquals("centre of gravity at x = 12.000 m is outside the boat; it must be from 0.000 to 10.000 m",
            refused(new Load(4200, 12, 0.8, 0, Angle.ofDegrees(0))));
    }

    private static String refused(Load load) {
        return assertInstanceOf(Loaded.Refused.class, RunningHull.of(BOW, Optional.empty(), load, Water.sea(15))).reason();
    }

    private static Craft craft(Weights weights, List<SeaTrial> trials) {
        return new Craft(new Drive(Drive.Kind.OUTBOARD, 1, Optional.empty(), Optional.empty(), Optional.empty()), Optional.of(weights),
            List.of(new RunningSpeed("troll", 5, Optional.empty()), new RunningSpeed("cruise", 25, Optional.empty())), HomeWater.SEA,
            new TrimBand(Angle.ofDegrees(0.2), Angle.ofDegrees(0.4)), trials);
    }

    /** Light and full, bow down and up: each end an answer of its own round the trim that the load gives. */
    @Test
    void law_theBandHasFourEnds() {
        Weights weights = new Weights(3900, 4500, FeaturePlace.Datum.AFT_OF_ORIGIN, 6.6, 0.8);
        CraftRunning boat = assertInstanceOf(CraftRunning.Ready.class, CraftRunning.of(BOW, Optional.empty(), craft(weights, List.of()))).running();
        AtSpeed cruise = boat.profile().get(1);
        assertEquals(List.of("light, bow down", "light, bow up", "full, bow down", "full, bow up"), cruise.ends().stream().map(AtSpeed.End::name).toList());
        Planes lightDown = as(Planes.class, cruise.ends().get(0).attitude());
        Planes lightUp = as(Planes.class, cruise.ends().get(1).attitude());
        Planes fullDown = as(Planes.class, cruise.ends().get(2).attitude());
        assertEquals(0.6, lightUp.trim().degrees() - lightDown.trim().degrees(), 1e-9);
        assertTrue(fullDown.wettedKeel() > lightUp.wettedKeel());
        assertEquals(Basis.WORKED_OUT, as(Planes.class, cruise.middle()).basis());
        assertEquals("line of thrust not told: the usual one for outboard, -0.18 m above the transom's foot, 0 deg to the base line"
            + " (common practice, no source)", boat.thrust());
        SeaTrial trial = new SeaTrial(24.6, Optional.of(Angle.ofDegrees(4.4)), Optional.empty());
        CraftRunning tried = assertInstanceOf(CraftRunning.Ready.class, CraftRunning.of(BOW, Optional.empty(), craft(weights, List.of(trial)))).running();
        assertEquals(4.4, as(Planes.class, tried.profile().get(1).middle()).trim().degrees(), 1e-9);
    }

    @Test
    void weightsOutsideTheBoatAreNamed() {
        Weights weights = new Weights(3900, 4500, FeaturePlace.Datum.AFT_OF_ORIGIN, 6.6, 5);
        assertTrue(assertInstanceOf(CraftRunning.NotReady.class, CraftRunning.of(BOW, Optional.empty(), craft(weights, List.of()))).reason()
            .startsWith("centre of gravity 5.000 m above base is outside the boat; it must be from "));
    }

    /** A stepped bottom has no attitude until its trim is measured; then what is dry and what is clean has its places. */
    @Test
    void aSteppedBottomAsksForAMeasuredTrim() {
        RunningHull boat = loaded(Hull.through(SteppedForms.prism()), new Load(6500, 5.4, 0.6, -0.2, Angle.ofDegrees(0)));
        double speed = 4.05 * Math.sqrt(2 * Water.GRAVITY);
        NotKnown unknown = as(NotKnown.class, boat.at(speed));
        assertEquals(Regime.STEPPED, unknown.regime());
        assertEquals("stepped: attitude not worked out; a measured trim is needed", unknown.reason());
        assertEquals(Regime.DISPLACEMENT, boat.at(2).regime());
        Stepped trimmed = as(Stepped.class, boat.at(speed, new SeaTrial(30, Optional.of(Angle.ofDegrees(4)), Optional.empty())));
        assertEquals(SteppedForms.AT, trimmed.bottom().end(), 1e-9);
        assertEquals("the bottom ahead of the first step is taken to carry one part in 2 of the weight (our choice: an equal share); "
            + "measure the wetted keel to know", trimmed.doubts().get(0));
        AirBehind air = trimmed.bottom().air().get(0);
        assertEquals(StepWakeAt.centre(4.05, trimmed.forward().orElseThrow().wettedKeel() / 2), air.centreline().orElseThrow() / 2, 1e-9);
        assertTrue(air.quarterBeam().orElseThrow() > air.centreline().orElseThrow());
        assertTrue(air.region().contains(5.05, 0.3) && air.region().contains(8.9, 0.8));
        PlanRegion ahead = trimmed.bottom().clean().get(0);
        assertTrue(ahead.contains(4.9, 0.1) && ahead.contains(4.9, 0.95));
        assertEquals(false, ahead.contains(trimmed.forward().orElseThrow().line().x(0.5) - 0.05, 0.5));
        PlanRegion abaft = trimmed.bottom().clean().get(1);
        double from = 5 + air.centreline().orElseThrow() + 2;
        assertTrue(abaft.contains(from + 0.1, 0.01));
        assertEquals(false, abaft.contains(from - 0.1, 0.01));
        assertEquals(false, air.region().contains(from + 0.1, 0.01));
        Stepped both = as(Stepped.class, boat.at(speed, new SeaTrial(30, Optional.of(Angle.ofDegrees(4)), Optional.of(4 + 3.0))));
        assertEquals(5 - 3.0, both.forward().orElseThrow().line().atKeel(), 2e-2);
    }

    /** At another trim than the contours were fitted for nothing abaft of the step is clean. */
    @Test
    void outsideTheContoursNothingAbaftOfTheStepIsClean() {
        RunningHull boat = loaded(Hull.through(SteppedForms.prism()), new Load(6500, 5.4, 0.6, -0.2, Angle.ofDegrees(0)));
        Stepped found = as(Stepped.class, boat.at(4.05 * Math.sqrt(2 * Water.GRAVITY), new SeaTrial(30, Optional.of(Angle.ofDegrees(5.5)), Optional.of(7.0))));
        assertEquals("where the water comes back is not known: trim of the keel ahead 5.50 is outside the contours' 3 to 5 deg",
            found.bottom().air().get(0).note());
        assertEquals(1, found.bottom().clean().size());
        assertTrue(found.bottom().air().get(0).region().contains(8.95, 0.02));
    }

    /** With dry chines the line of (3) is laid as measured, straight to the step, spray ahead of it; nothing abaft of the step is clean. */
    @Test
    void exact_dryChinesAheadOfAStep() {
        RunningHull boat = loaded(Hull.through(SteppedForms.prism()), new Load(6500, 5.4, 0.6, -0.2, Angle.ofDegrees(0)));
        Stepped found = as(Stepped.class, boat.at(4.05 * Math.sqrt(2 * Water.GRAVITY), new SeaTrial(30, Optional.of(Angle.ofDegrees(2.5)), Optional.of(7.0))));
        ChinesDry dry = as(ChinesDry.class, found.forward().orElseThrow());
        assertEquals(3.0, dry.wettedKeel(), 1e-6);
        double outermost = 3.0 * Math.PI * Math.tan(Math.toRadians(2.5)) / (2 * SteppedForms.RISE);
        assertTrue(outermost < 1);
        for (double part = 0; part <= 1; part += 0.25) {
            assertEquals(2 + 3 * part, dry.line().x(part * outermost * (1 - 1e-9)), 1e-4);
        }
        assertEquals(Math.atan2(outermost, 3), dry.stagnationAngle().radians(), 1e-9);
        assertTrue(Double.isNaN(dry.line().x(outermost + 0.01)));
        assertTrue(found.bottom().clean().get(0).contains(4.9, 0.9 * outermost) && !found.bottom().clean().get(0).contains(4.9, outermost));
        PlanRegion spray = dry.spray().orElseThrow();
        assertTrue(spray.contains(4.9, outermost + 0.01) && !spray.contains(4.9, 0.9 * outermost));
        for (Vector2D point : spray.outline().points()) {
            assertTrue(point.getY() <= 1 + 1e-6 && point.getX() <= 5 + 1e-9);
        }
        assertEquals("where the water comes back is not known: the chines are dry ahead of it, and the contours are of bottoms with wet chines",
            found.bottom().air().get(0).note());
        assertTrue(found.bottom().air().get(0).region().contains(8.95, 0.02));
    }

    private static CraftRunning untold(OptionalDouble draught, SeaTrial... trials) {
        Craft craft = new Craft(new Drive(Drive.Kind.OUTBOARD, 1, Optional.empty(), Optional.empty(), Optional.empty()), Optional.empty(),
            List.of(new RunningSpeed("troll", 5, Optional.empty()), new RunningSpeed("cruise", 25, Optional.empty())), HomeWater.SEA,
            new TrimBand(Angle.ofDegrees(0.2), Angle.ofDegrees(0.4)), List.of(trials));
        return assertInstanceOf(CraftRunning.Ready.class, CraftRunning.of(BOW, Optional.empty(), craft, draught)).running();
    }

    /** Without weights a measured trim and keel give the same water as with them; the ends of the band carry what was lifted. */
    @Test
    void law_trimAndKeelMeasuredNeedNoWeights() {
        Planes own = as(Planes.class, running(LOAD).at(25 * KNOT));
        SeaTrial both = new SeaTrial(25, Optional.of(own.trim()), Optional.of(own.wettedKeel()));
        AtSpeed cruise = untold(OptionalDouble.empty(), both).profile().get(1);
        Planes found = as(Planes.class, cruise.middle());
        assertEquals(own.line().atChine(), found.line().atChine(), 2e-2);
        assertEquals(LOAD.weight(), found.run().lift(), 0.01 * LOAD.weight());
        assertTrue(found.doubts().contains(String.format(Locale.ROOT, "at the measured trim and wetted keel the planing method lifts %.0f kg; "
            + "what she weighs is not told", found.run().lift() / Water.GRAVITY)), found.doubts().toString());
        assertEquals(List.of("bow down", "bow up"), cruise.ends().stream().map(AtSpeed.End::name).toList());
        Planes up = as(Planes.class, cruise.ends().get(1).attitude());
        assertEquals(own.trim().degrees() + 0.4, up.trim().degrees(), 1e-9);
        assertEquals(found.run().lift(), up.run().lift(), 1e-6 * up.run().lift());
        assertTrue(up.wettedKeel() < found.wettedKeel());
        Planes weighed = as(Planes.class, running(LOAD).at(25 * KNOT, both));
        assertTrue(weighed.doubts().stream().anyMatch(doubt -> doubt.endsWith(", 1.00 of the boat's 4200 kg")), weighed.doubts().toString());
    }

    /** Of one measurement without weights only itself is known; slow she lies at the draught that is told. */
    @Test
    void withoutWeightsOneMeasurementIsNotEnough() {
        AtSpeed cruise = untold(OptionalDouble.empty(), new SeaTrial(25, Optional.of(Angle.ofDegrees(4)), Optional.empty())).profile().get(1);
        NotKnown unknown = as(NotKnown.class, cruise.middle());
        assertEquals(4, unknown.knownTrim().orElseThrow().degrees(), 1e-12);
        assertEquals("where the bottom is wet is not known: the boat's mass is not told; with it, or with trim and wetted keel both measured, it would be",
            unknown.reason());
        assertEquals("neither the boat's mass nor her draught is told",
            as(NotKnown.class, untold(OptionalDouble.empty(), new SeaTrial(25, Optional.of(Angle.ofDegrees(4)), Optional.empty())).profile().get(0).middle()).reason());
        AtSpeed troll = untold(OptionalDouble.of(0.5)).profile().get(0);
        Floats floats = as(Floats.class, troll.middle());
        assertEquals(Basis.DRAUGHT_TOLD, floats.basis());
        assertEquals(0.5, floats.afloat().hull().water().height(), 0);
        Floats down = as(Floats.class, troll.ends().get(0).attitude());
        assertEquals(-0.2, down.trim().degrees(), 1e-9);
        assertEquals(floats.afloat().whole().volume(), down.afloat().whole().volume(), 2e-3 * floats.afloat().whole().volume());
        assertEquals("water at 9.000 m above base at x = 0.000 m, trim 0.00 deg, comes 6.600 m over the sheer at x = 0.000 m",
            as(NotKnown.class, untold(OptionalDouble.of(9)).profile().get(0).middle()).reason());
        assertEquals("water at -1.000 m above base at x = 0.000 m, trim 0.00 deg, does not cut the hull: her keel stays 0.999 m above it",
            as(NotKnown.class, untold(OptionalDouble.of(-1)).profile().get(0).middle()).reason());
    }

    /** The contours asked directly: step of 0.025 beams, deadrise of the prism, level keels. */
    private static final class StepWakeAt {
        static double centre(double cv, double wetted) {
            StepWake wake = new StepWake(cv, 4, Math.toDegrees(Math.atan(SteppedForms.RISE)), wetted);
            return assertInstanceOf(StepWake.After.class, wake.meets(StepWake.Place.CENTRELINE, SteppedForms.STEP / 2, 0)).beams();
        }
    }
}
