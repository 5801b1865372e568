package org.garboard.flow.attitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.lifecycle.AfterContainer;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.craft.SeaTrial;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.hull.SteppedForms;
import org.garboard.units.Angle;

/**
 * Whatever is asked of a hull, sensible or not, the answer has no number outside the ranges that the sources give their methods, and
 * where there is none it has words.
 */
class AnyAttitudeTest {
    private static final List<Hull> HULLS = List.of(PlaningHullTest.warped(1), PlaningHullTest.warped(0.6), Hull.through(SteppedForms.prism()));
    private static final int SPEEDS = 8;
    private static final int[] REGIMES = new int[Regime.values().length];
    private static int dry;

    /** The paper's own limits: C_V 1 to 13, trim of the keel 2 to 15 degrees, at most 4 beams, both chines wet. */
    @Property(tries = 100, shrinking = ShrinkingMode.OFF, seed = "71")
    void law_noNumberOutsideTheMethods(@ForAll long seed) {
        SplittableRandom lot = new SplittableRandom(seed);
        Hull hull = HULLS.get(lot.nextInt(HULLS.size()));
        double length = hull.afterEnd() - hull.forwardEnd();
        double usual = 4.5 * length * length * length;
        Load load = new Load(usual * Math.pow(4, lot.nextDouble(-1, 1)), hull.forwardEnd() + length * lot.nextDouble(0.4, 0.9), lot.nextDouble(0.1, 1.2),
            lot.nextDouble(-0.5, 0.5), Angle.ofDegrees(lot.nextDouble(-5, 14)));
        Water water = new Water(lot.nextDouble(0, 40), lot.nextDouble(0, 42));
        Loaded loaded = RunningHull.of(hull, Optional.empty(), load, water);
        if (loaded instanceof Loaded.Refused refused) {
            assertFalse(refused.reason().isBlank());
            return;
        }
        RunningHull boat = (RunningHull) loaded;
        for (int i = 0; i < SPEEDS; i++) {
            double speed = Math.exp(lot.nextDouble(Math.log(0.5), Math.log(80)));
            Attitude attitude = switch (lot.nextInt(4)) {
                case 0 -> boat.at(speed);
                case 1 -> boat.at(speed, Angle.ofDegrees(lot.nextDouble(-3, 17)));
                case 2 -> boat.at(speed, new SeaTrial(speed / 1852 * 3600, Optional.empty(), Optional.of(lot.nextDouble(0.1, 1.1) * length)));
                default -> boat.at(speed, new SeaTrial(speed / 1852 * 3600, Optional.of(Angle.ofDegrees(lot.nextDouble(0, 16))), Optional.of(lot.nextDouble(0.1, 0.9) * length)));
            };
            holds(hull, attitude, speed, boat.atRest().length());
        }
    }

    private static void holds(Hull hull, Attitude attitude, double speed, double wetLength) {
        REGIMES[attitude.regime().ordinal()]++;
        assertEquals(speed, attitude.speed());
        double froude = speed / Math.sqrt(9.80665 * wetLength);
        if (attitude instanceof Attitude.NotKnown unknown) {
            assertFalse(unknown.reason().isBlank());
        } else if (attitude instanceof Attitude.Floats floats) {
            assertTrue(froude <= 0.40 + 1e-9 && floats.froude() <= 0.40 + 1e-9);
            assertTrue(floats.draught() > 0 && Math.abs(floats.trim().degrees()) < 20, attitude.toString());
        } else {
            assertTrue(froude > 0.40);
            attitude.carrying().ifPresent(planes -> holds(hull, planes));
        }
    }

    private static void holds(Hull hull, Attitude.Wetted planes) {
        double cv = planes.speedCoefficient();
        assertTrue(cv >= 1 && cv <= 13, "C_V " + cv);
        assertTrue(planes.bottomSpeed() > 0 && planes.bottomSpeed() <= planes.speed(), "speed along the bottom " + planes.bottomSpeed());
        assertTrue(planes.wettedKeel() > 0 && planes.line().atKeel() >= hull.forwardEnd(), "wetted keel " + planes.wettedKeel());
        double before = -1;
        for (Vector2D point : planes.line().points()) {
            assertTrue(point.getX() >= hull.forwardEnd() && point.getX() <= planes.end() + 1e-9 && point.getY() > before, "line through " + point);
            before = point.getY();
        }
        if (planes instanceof Attitude.Planes full) {
            double tau = full.run().trim().degrees();
            double beta = full.run().prism().deadrise().degrees();
            assertTrue(tau >= 2 && tau < 15, "trim of the keel " + tau);
            assertTrue(full.run().beams() <= 4 && full.run().beams() > 0, "beams " + full.run().beams());
            // the paper's (5): the chines are wet while lambda is more than tan beta / (2 pi tan tau)
            assertTrue(full.run().beams() > Math.tan(Math.toRadians(beta)) / (2 * Math.PI * Math.tan(Math.toRadians(tau))), "chines");
            assertTrue(full.drag() > 0 && Double.isFinite(full.drag()), "drag " + full.drag());
            assertTrue(full.wettedChine() > 0, "wetted chine " + full.wettedChine());
        } else {
            dry++;
        }
    }

    /** The lot has come upon every kind of answer. */
    @AfterContainer
    static void everyKindWasAsked() {
        for (Regime regime : Regime.values()) {
            assertTrue(REGIMES[regime.ordinal()] > 10, regime + ": " + REGIMES[regime.ordinal()]);
        }
        assertTrue(dry > 3, "chines dry: " + dry);
    }
}
