package org.garboard.flow.streams;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.garboard.flow.doublebody.DoubleBody;
import org.garboard.flow.doublebody.HullFlow;
import org.garboard.flow.doublebody.MeshWish;
import org.garboard.flow.doublebody.Stern;
import org.garboard.flow.doublebody.WigleyHull;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.offsets.LineKind;
import org.garboard.units.Angle;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HullStreamsTest {
    private static final double T = WigleyHull.T;
    private static final double L = WigleyHull.L;
    private static final Hull HULL = WigleyHull.hull();
    private static HullStreams streams;

    @BeforeAll
    static void flow() {
        streams = over(WaterSurface.level(T));
    }

    private static HullStreams over(WaterSurface water) {
        return new HullStreams(assertInstanceOf(HullFlow.class,
            DoubleBody.past(HULL, water, new MeshWish(80, 20, Stern.STRAIGHT_RUN))));
    }

    private static Streamline atDepth(double x, double depth) {
        return assertInstanceOf(Streamline.class, streams.atDepth(x, depth));
    }

    /** Near-surface water goes deep: independent computation of Wigley's hull, to 0.004 T; and as deep aft as it came. */
    @ParameterizedTest
    @CsvSource({"0.05, 0.183", "0.10, 0.335", "0.20, 0.548", "0.30, 0.688", "0.50, 0.866"})
    void exact_wigleysDepthsAmidships(double atBow, double amidships) {
        Streamline line = atDepth(0.05 * L, atBow * T);
        assertEquals(amidships, (T - line.at(0.5 * L).z()) / T, 0.004);
        assertEquals(atBow, (T - line.at(0.95 * L).z()) / T, 0.001);
    }

    @ParameterizedTest
    @CsvSource({"0.05, 0.5", "0.1, 0.8", "0.3, 0.93", "0.5, 0.97", "0.8, 0.9"})
    void law_linesTraceBackToTheirSeeds(double atBow, double aft) {
        Streamline line = atDepth(0.05 * L, atBow * T);
        StreamPoint there = line.at(aft * L);
        int after = 1;
        while (line.points().get(after).x() < there.x()) {
            after++;
        }
        StreamPoint node = line.points().get(after);
        Streamline back = atDepth(node.x(), T - node.z());
        StreamPoint seed = line.through();
        assertTrue(back.distance(seed.x(), seed.y(), seed.z()) < 0.001, "back within 1 mm");
    }

    /** They stay on the skin: no farther from it than the panels' chords, 1.5 mm with so many panels, and run from stem to stern. */
    @Test
    void law_linesStayOnTheHull() {
        for (double depth = 0.05; depth < 0.95; depth += 0.1) {
            Streamline line = atDepth(0.5 * L, depth * T);
            assertEquals(0, line.points().get(0).x(), 1e-6);
            assertEquals(L, line.points().get(line.points().size() - 1).x(), 1e-6);
            for (StreamPoint point : line.points()) {
                assertEquals(WigleyHull.halfBreadth(point.x(), point.z()), point.y(), 0.0015, "at x = " + point.x());
            }
        }
    }

    /** Water along the centreline and the surface stays there. */
    @Test
    void law_edgesAreStreamlines() {
        for (StreamPoint point : atDepth(0.3 * L, 0).points()) {
            assertEquals(T, point.z(), 1e-9);
        }
        Streamline keel = assertInstanceOf(Streamline.class, streams.through(0.3 * L, 0));
        for (StreamPoint point : keel.points()) {
            assertEquals(0, point.y(), 1e-9);
            assertEquals(0, point.z(), 1e-9);
        }
        assertEquals(L, keel.points().get(keel.points().size() - 1).run(), 1e-6);
    }

    @Test
    void law_portMirrorsStarboard() {
        Streamline starboard = assertInstanceOf(Streamline.class, streams.through(5, 0.4));
        Streamline port = assertInstanceOf(Streamline.class, streams.through(5, -0.4));
        assertEquals(starboard.points().size(), port.points().size());
        for (int i = 0; i < port.points().size(); i++) {
            assertEquals(starboard.points().get(i).y(), -port.points().get(i).y());
            assertEquals(starboard.points().get(i).z(), port.points().get(i).z());
        }
        assertEquals(0.4, starboard.through().y(), 1e-9);
        assertEquals(5, starboard.through().x(), 1e-9);
    }

    /** With trim places come back in the hull frame. */
    @Test
    void law_trimmedLinesLieOnTheHull() {
        HullStreams trimmed = over(new WaterSurface(0.7, 6, Angle.ofDegrees(0.8)));
        Streamline line = assertInstanceOf(Streamline.class, trimmed.through(6, 0.4));
        assertEquals(6, line.through().x(), 1e-7);
        for (StreamPoint point : line.points()) {
            assertEquals(WigleyHull.halfBreadth(point.x(), point.z()), point.y(), 0.0015, "at x = " + point.x());
        }
    }

    /** All the lines of the upper water pass within a metre of its middle; a tenth of T at the keel amidships none. */
    @Test
    void law_sharesOfTheUpperWater() {
        SweepDown sweep = SweepDown.of(streams, 0.2 * T);
        assertEquals(0.05 * L, sweep.station(), 1e-9);
        assertEquals(100, sweep.lines().size());
        assertEquals(1, sweep.share(6, 0.4, T - 0.3, 1));
        assertEquals(0, sweep.share(6, 0, 0, 0.1 * T));
        double one = sweep.share(6, WigleyHull.halfBreadth(6, T - 0.3 * T), 0.7 * T, 0.1);
        assertTrue(one > 0 && one < 1, "share " + one);
        assertEquals(one, sweep.share(6, -WigleyHull.halfBreadth(6, T - 0.3 * T), 0.7 * T, 0.1));
        // what starts above a tenth of T is above 0.335 T amidships: half of the lines, counted by the closed band
        long above = sweep.lines().stream().filter(line -> T - line.at(6).z() < 0.335 * T).count();
        assertEquals(50, above, 1);
    }

    /** A chine boat whose chine leaves the water forward: lines move by no more than 10 mm when the panels are doubled. */
    @ParameterizedTest
    @CsvSource({"0.3", "0.6", "0.8", "0.9"})
    void law_linesOfAChineBoatConverge(double y) {
        Streamline coarse = throughAft(1500, y);
        Streamline fine = throughAft(3000, y);
        for (double x = 1.2; x < 8; x += 0.4) {
            assertEquals(fine.at(x).y(), coarse.at(x).y(), 0.01, "y at " + x);
            assertEquals(fine.at(x).z(), coarse.at(x).z(), 0.01, "z at " + x);
        }
    }

    private static Streamline throughAft(int panels, double y) {
        Hull hull = Hull.through(new Forms(0, Forms.even(0, 8, 17)).keel(HullStreamsTest::rise)
            .named(LineKind.CHINE, "Chine", HullStreamsTest::breadth, x -> rise(x) + 0.25 * breadth(x))
            .named(LineKind.SHEER, "Sheer", x -> 1.1 * breadth(x), x -> rise(x) + 1.2).table());
        DoubleBody flow = DoubleBody.past(hull, WaterSurface.level(0.4), MeshWish.atMost(panels, Stern.STRAIGHT_RUN));
        return assertInstanceOf(Streamline.class, new HullStreams(assertInstanceOf(HullFlow.class, flow)).through(5.5, y));
    }

    private static double breadth(double x) {
        double bow = Math.max(0, 1 - x / 5);
        return 1 - bow * bow;
    }

    private static double rise(double x) {
        double bow = Math.max(0, 1 - x / 3);
        return 0.6 * bow * bow;
    }

    @Test
    void placesOffTheHullAreNamed() {
        assertEquals("x = 13.000 m is off the hull in the water, which is from 0.000 to 12.000 m", off(streams.through(13, 0)));
        assertEquals("y = 0.700 m at x = 6.000 m is off the hull in the water, which is 0.000 to 0.600 m from the centreline there",
            off(streams.through(6, 0.7)));
        assertEquals("a depth of 0.800 m at x = 6.000 m is off the hull, which is from 0 to 0.750 m deep there", off(streams.atDepth(6, 0.8)));
    }

    private static String off(Traced traced) {
        return assertInstanceOf(Traced.OffTheSkin.class, traced).reason();
    }

    @Test
    void anUpperWaterOfNothingIsNamed() {
        assertEquals("an upper water of 0.0 m: it must be deeper than 0",
            assertThrows(IllegalArgumentException.class, () -> SweepDown.of(streams, 0)).getMessage());
    }
}
