package org.garboard.flow.planing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Where the method begins and ends, to either side of each bound, and where no trim balances. */
class PlaningEdgesTest {
    private static final double BEAM = 2.1;

    private static Prism prism(double deadrise) {
        return new Prism(BEAM, Angle.ofDegrees(deadrise));
    }

    /** At a speed coefficient. */
    private static Stream stream(double coefficient) {
        return new Stream(coefficient * Math.sqrt(9.81 * BEAM), 1025, 1.19e-6, 9.81);
    }

    private static PrismRun run(double deadrise, double coefficient, double trim, double beams) {
        return PrismBalance.lifting(prism(deadrise), stream(coefficient), Angle.ofDegrees(trim), beams);
    }

    /** 1 to 13 by the paper. */
    @Test
    void published_speedCoefficients() {
        assertFalse(PlaningRange.outside(prism(18), stream(1.0001)).isPresent());
        assertTrue(PlaningRange.outside(prism(18), stream(0.9999)).isPresent());
        assertFalse(PlaningRange.outside(prism(18), stream(12.999)).isPresent());
        assertTrue(PlaningRange.outside(prism(18), stream(13.001)).isPresent());
        assertEquals(2.5, prism(18).speedCoefficient(stream(2.5)), 1e-12);
    }

    /** 2 to 15 degrees, 4 beams, chines wet above tan(deadrise) / (2 pi tan(trim)), by the paper. */
    @Test
    void published_trimsAndLengths() {
        assertFalse(PlaningRange.outside(Angle.ofDegrees(2.0001)).isPresent());
        assertTrue(PlaningRange.outside(Angle.ofDegrees(1.9999)).isPresent());
        assertFalse(PlaningRange.outside(Angle.ofDegrees(14.999)).isPresent());
        assertTrue(PlaningRange.outside(Angle.ofDegrees(15)).isPresent());
        assertEquals(Optional.empty(), PlaningRange.outside(run(18, 3, 4, 4)));
        assertEquals(Optional.of("more than 4 beams wetted, where the planing method does not hold"), PlaningRange.outside(run(18, 3, 4, 4.0001)));
        double dry = Math.tan(Math.toRadians(18)) / (2 * Math.PI * Math.tan(Math.toRadians(4)));
        assertEquals(Optional.empty(), PlaningRange.outside(run(18, 3, 4, dry + 1e-6)));
        assertTrue(PlaningRange.outside(run(18, 3, 4, dry - 1e-6)).orElseThrow().startsWith("chines dry"));
        assertEquals(0, run(18, 3, 4, dry).wettedChine(), 1e-9);
        assertTrue(PlaningRange.outside(run(18, 0.99, 4, 2)).orElseThrow().startsWith("speed coefficient 0.99 is below 1"));
        assertTrue(PlaningRange.outside(run(18, 3, 1.99, 2)).orElseThrow().startsWith("trim of the keel below 2"));
    }

    /** (3) holds for all above 2, from 1 to 2 for deadrise up to 10 degrees. */
    @Test
    void published_slowAndSteepIsDoubted() {
        assertEquals(Optional.empty(), PlaningRange.doubt(run(10, 1.99, 4, 2)));
        assertTrue(PlaningRange.doubt(run(10.01, 1.99, 4, 2)).isPresent());
        assertEquals(Optional.empty(), PlaningRange.doubt(run(10.01, 2.001, 4, 2)));
        assertEquals(Optional.empty(), PlaningRange.tooSlowForDryChines(prism(10), stream(1.99)));
        assertEquals(Optional.empty(), PlaningRange.tooSlowForDryChines(prism(10.01), stream(2.001)));
        assertEquals(Optional.of("chines dry at a speed coefficient of 1.99: below 2 the paper's stagnation line is established up to 10 deg of deadrise only"),
            PlaningRange.tooSlowForDryChines(prism(10.01), stream(1.99)));
    }

    /** Fig. 18 between its curves and readings, straight: half-way in load and in deadrise the mean of four readings. */
    @Test
    void exact_porpoisingIsReadStraightBetween() {
        assertEquals((4.9 + 7.0 + 5.7 + 7.9) / 4, Porpoising.limit(0.225, 15).orElseThrow(), 1e-12);
        assertEquals((1.1 + 1.8 + 2.7 + 3.3) / 4, Porpoising.limit(0.14, 5).orElseThrow(), 1e-12);
        assertTrue(Porpoising.limit(0.30, 20).isPresent() && Porpoising.limit(0.3001, 20).isEmpty());
        assertTrue(Porpoising.limit(0.2, 0).isPresent() && Porpoising.limit(0.2, -0.01).isEmpty());
    }

    /** She is warned as soon as she trims within the reading of the curve; the load is that of what she lifts. */
    @Test
    void exact_porpoisingIsWarnedWithinTheReading() {
        double load = 0.20;
        Stream stream = stream(4);
        PrismBalance balance = PrismBalance.of(prism(10), stream, Loading.ofWeight(2 * load * load * stream.pressure() * BEAM * BEAM));
        assertEquals(Optional.empty(), Porpoising.note(balance.at(Angle.ofDegrees(4.59))));
        assertEquals(Optional.of("may porpoise: limit of trim about 4.9 deg (Savitsky 1964, Fig. 18, read to 0.3 deg)"),
            Porpoising.note(balance.at(Angle.ofDegrees(4.61))));
    }

    /** A centre of gravity far forward wants less trim than the least looked for, one abaft of the transom more than the most: the nearer end, from near as from afar. */
    @Test
    void law_whereNothingBalancesTheNearerEndIsTold() {
        for (double near : new double[] {0.1, 0.3, 0.32, 4, 14.99, 15, 20}) {
            PrismBalance forward = PrismBalance.of(prism(18), stream(3), new Loading(25_000, 40, 0.75, 0, Angle.ofDegrees(0)));
            PrismBalance aft = PrismBalance.of(prism(18), stream(3), new Loading(25_000, -5, 0.75, 0, Angle.ofDegrees(0)));
            assertEquals(forward.trim().degrees(), forward.trimNear(Angle.ofDegrees(near)).degrees(), 0);
            assertEquals(aft.trim().degrees(), aft.trimNear(Angle.ofDegrees(near)).degrees(), 0);
            assertEquals(0.3, forward.trim().degrees(), 1e-12);
            assertEquals(15, aft.trim().degrees(), 1e-12);
        }
    }

    /** The edge in the plane of the bottom, turned down into plan by the deadrise: its run athwart shrinks by the cosine, that along does not. */
    @Test
    void exact_sprayEdgeInPlan() {
        Spray spray = prism(20).spray(Angle.ofDegrees(4));
        double edge = spray.edge().radians();
        assertEquals(Math.tan(edge) * Math.cos(Math.toRadians(20)), Math.tan(spray.edgeInPlan(Angle.ofDegrees(20)).radians()), 1e-12);
        assertTrue(spray.edge().degrees() > prism(20).stagnationAngle(Angle.ofDegrees(4)).degrees(), "ahead of the stagnation line");
    }

    @Test
    void exact_boundsOfInput() {
        for (double beam : new double[] {0, -1, 100, Double.NaN}) {
            assertTrue(assertThrows(IllegalArgumentException.class, () -> new Prism(beam, Angle.ofDegrees(10))).getMessage().startsWith("beam between the chines is " + beam));
        }
        assertEquals(60, new Prism(99, Angle.ofDegrees(60)).deadrise().degrees(), 1e-12);
        assertThrows(IllegalArgumentException.class, () -> new Prism(2, Angle.ofDegrees(60.1)));
        for (double[] bad : new double[][] {{0, 1e-6, 9.81}, {1025, 0, 9.81}, {1025, 1e-6, 0}}) {
            assertTrue(assertThrows(IllegalArgumentException.class, () -> new Stream(10, bad[0], bad[1], bad[2])).getMessage().startsWith("density "));
        }
        assertThrows(IllegalArgumentException.class, () -> new Stream(200, 1025, 1e-6, 9.81));
        assertThrows(IllegalArgumentException.class, () -> new Loading(1, Double.POSITIVE_INFINITY, 0, 0, Angle.ofDegrees(0)));
        assertThrows(IllegalArgumentException.class, () -> new Loading(1, 0, Double.NaN, 0, Angle.ofDegrees(0)));
    }
}
