package org.garboard.flow.planing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

class PrismLawTest {
    private static final double WEIGHT = 22_000;
    private static final Prism PRISM = new Prism(2.1, Angle.ofDegrees(19));

    private static Stream stream(double speed) {
        return new Stream(speed, 1025, 1.19e-6, 9.81);
    }

    private static Loading loading(double shaft) {
        return new Loading(WEIGHT, 2.3, 0.75, 0.95, Angle.ofDegrees(shaft));
    }

    /** With the thrust along the keel the forces of the balance close exactly, level, upright and about the centre of gravity. */
    @Test
    void law_forcesAndMomentsClose() {
        for (double speed = 9; speed <= 24; speed += 1.5) {
            PrismBalance balance = PrismBalance.of(PRISM, stream(speed), loading(0));
            PrismRun run = balance.at(balance.trim());
            double tau = run.trim().radians();
            double b = PRISM.beam();
            double thrust = WEIGHT * Math.sin(tau) + run.friction();
            double pressure = WEIGHT * Math.cos(tau);
            assertEquals(0, (pressure * Math.cos(tau) + (thrust - run.friction()) * Math.sin(tau) - WEIGHT) / WEIGHT, 1e-6);
            assertEquals(0, ((thrust - run.friction()) * Math.cos(tau) - pressure * Math.sin(tau)) / WEIGHT, 1e-6);
            double a = 0.75 - 0.25 * b * Math.tan(PRISM.deadrise().radians());
            assertEquals(0, (pressure * (2.3 - run.pressureCentre()) + run.friction() * a - thrust * 0.95) / (WEIGHT * b), 1e-6);
            assertEquals(thrust, run.drag() * Math.cos(tau), 1e-9 * WEIGHT);
            assertEquals(WEIGHT, stream(speed).pressure() * b * b * lift(run), 1e-6 * WEIGHT);
        }
    }

    /** Forward through (15) and (16), where the balance went backward. */
    private static double lift(PrismRun run) {
        return Savitsky.deadriseLift(Savitsky.flatLift(run.trim().degrees(), run.beams(), run.speedCoefficient()), 19);
    }

    /** The published moment is nought to a millionth of weight times beam with an inclined shaft too. */
    @Test
    void law_thePublishedMomentIsNought() {
        for (double shaft = -4; shaft <= 14; shaft += 2) {
            PrismBalance balance = PrismBalance.of(PRISM, stream(14), loading(shaft));
            assertEquals(0, balance.at(balance.trim()).moment() / (WEIGHT * PRISM.beam()), 1e-9);
        }
    }

    /** Froude: twice the boat at root 2 the speed, viscosity scaled too, runs at the same trim with all lengths doubled. */
    @Test
    void law_scalesByFroude() {
        PrismBalance small = PrismBalance.of(PRISM, stream(13), loading(5));
        double root = Math.sqrt(2);
        PrismBalance large = PrismBalance.of(new Prism(4.2, Angle.ofDegrees(19)), new Stream(13 * root, 1025, 1.19e-6 * 2 * root, 9.81),
            new Loading(8 * WEIGHT, 4.6, 1.5, 1.9, Angle.ofDegrees(5)));
        PrismRun one = small.at(small.trim());
        PrismRun two = large.at(large.trim());
        assertEquals(one.trim().degrees(), two.trim().degrees(), 1e-9);
        assertEquals(2 * one.wettedKeel(), two.wettedKeel(), 1e-9);
        assertEquals(2 * one.wettedChine(), two.wettedChine(), 1e-9);
        assertEquals(8 * one.drag(), two.drag(), 1e-7 * two.drag());
    }

    /** A trim found from near by is the trim found from afar. */
    @Test
    void law_aWarmStartFindsTheSameTrim() {
        for (double speed = 8; speed <= 24; speed += 2) {
            PrismBalance balance = PrismBalance.of(PRISM, stream(speed), loading(3));
            double cold = balance.trim().degrees();
            for (double near = 0; near < 16; near += 0.7) {
                assertEquals(cold, balance.trimNear(Angle.ofDegrees(near)).degrees(), 1e-10, speed + " from " + near);
            }
        }
    }

    /** At the trim and length that were found the measured forms find them again. */
    @Test
    void law_measurementsOfTheBalanceGiveTheBalance() {
        PrismBalance balance = PrismBalance.of(PRISM, stream(14), loading(3));
        PrismRun run = balance.at(balance.trim());
        assertEquals(run.drag(), balance.measured(run.trim(), run.beams()).drag(), 1e-9 * run.drag());
    }

    /** The line runs from the keel to the chine at the paper's angle, the same to port. */
    @Test
    void exact_stagnationLine() {
        PrismBalance balance = PrismBalance.of(PRISM, stream(14), loading(3));
        PrismRun run = balance.at(Angle.ofDegrees(4));
        assertEquals(run.wettedKeel(), run.stagnationAt(0), 1e-12);
        assertEquals(run.wettedChine(), run.stagnationAt(1.05), 1e-12);
        assertEquals(run.stagnationAt(0.4), run.stagnationAt(-0.4), 0);
        assertEquals(Math.tan(run.stagnationAngle().radians()), 0.7 / (run.wettedKeel() - run.stagnationAt(0.7)), 1e-12);
    }

    @Test
    void outsideTheMethodIsNamed() {
        assertEquals(Optional.of("speed coefficient 0.66 is below 1, where the planing method begins"), PlaningRange.outside(PRISM, stream(3)));
        assertEquals(Optional.of("speed coefficient 15.42 is above 13, where the planing method ends"), PlaningRange.outside(PRISM, stream(70)));
        assertEquals(Optional.empty(), PlaningRange.outside(PRISM, stream(14)));
        PrismBalance balance = PrismBalance.of(PRISM, stream(14), loading(3));
        assertEquals(Optional.of("trim of the keel below 2 deg, where the planing method does not hold"), at(balance, 1.9));
        assertEquals(Optional.of("trim of the keel 15 deg or more, where the planing method does not hold"), at(balance, 15));
        assertEquals(Optional.of("chines dry: the spray leaves the bottom inside the chines, where the planing method does not hold"),
            PlaningRange.outside(PrismBalance.of(PRISM, stream(23), loading(3)).at(Angle.ofDegrees(4.5))));
        assertEquals(Optional.of("more than 4 beams wetted, where the planing method does not hold"),
            PlaningRange.outside(balance.measured(Angle.ofDegrees(3), 4.01)));
        assertEquals(Optional.of("chines dry: the spray leaves the bottom inside the chines, where the planing method does not hold"),
            PlaningRange.outside(balance.measured(Angle.ofDegrees(3), 0.01)));
        assertEquals(Optional.of("speed coefficient 1.76: below 2 the paper's wetted chine length is established up to 10 deg of deadrise only"),
            PlaningRange.doubt(PrismBalance.of(PRISM, stream(8), loading(3)).at(Angle.ofDegrees(4))));
    }

    private static Optional<String> at(PrismBalance balance, double trim) {
        return PlaningRange.outside(balance.at(Angle.ofDegrees(trim)));
    }

    @Test
    void badInputIsNamed() {
        assertEquals("speed is 0.0 m/s; it must be more than 0 and less than 200 m/s",
            assertThrows(IllegalArgumentException.class, () -> stream(0)).getMessage());
        assertEquals("speed is -3.0 m/s; it must be more than 0 and less than 200 m/s",
            assertThrows(IllegalArgumentException.class, () -> stream(-3)).getMessage());
        assertEquals("deadrise is -1.0 deg; it must be from 0 to 60 deg",
            assertThrows(IllegalArgumentException.class, () -> new Prism(2, Angle.ofDegrees(-1))).getMessage());
        assertTrue(assertThrows(IllegalArgumentException.class, () -> new Loading(0, 1, 1, 1, Angle.ofDegrees(0))).getMessage()
            .contains("the weight must be more than 0"));
    }
}
