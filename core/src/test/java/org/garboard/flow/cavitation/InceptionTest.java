package org.garboard.flow.cavitation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.garboard.flow.cavitation.Suction.FairingNose;
import org.garboard.flow.cavitation.Suction.RoundedEdge;
import org.garboard.flow.water.Water;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class InceptionTest {
    private static final double KNOT = 1852 / 3600.0;
    private static final Inception HALF_A_METRE_DOWN = new Inception(Water.sea(15), 0.5);

    /** Independent computation: half bodies on the skin, knots half a metre down in the sea at 15 degrees. */
    @ParameterizedTest
    @CsvSource({"2, -.46414, 40.8", "3, -.25881, 54.6", "4, -.16977, 67.4", "5, -.12174, 79.6", "6, -.09241, 91.3",
        "8, -.05936, 114.0", "10, -.04184, 135.8", "1, -1.25, 24.8"})
    void independent_halfSpheroids(double ratio, double coefficient, double knots) {
        double found = new FairingNose(2 * ratio, 2, 1, Angle.ofDegrees(0)).least();
        assertEquals(coefficient, found, 5e-6);
        assertEquals(knots, HALF_A_METRE_DOWN.speed(found) / KNOT, 0.06);
    }

    /** Independent computation: semi-axes 4 : 1 : 0.5, yawed. */
    @ParameterizedTest
    @CsvSource({"4, 0.5, 0, -.09763, 88.9", "4, 0.5, 5, -.10538, 85.5", "4, 0.5, 10, -.12839, 77.5", "4, 0.5, 15, -.16598, 68.2",
        "3, 0.5, 0, -.14964, 71.8", "4, 0.25, 0, -.05282, 120.8"})
    void independent_fairings(double a, double height, double yaw, double coefficient, double knots) {
        double found = new FairingNose(2 * a, 2, height, Angle.ofDegrees(yaw)).least();
        assertEquals(coefficient, found, 5e-6);
        assertEquals(knots, HALF_A_METRE_DOWN.speed(found) / KNOT, 0.06);
    }

    /** Independent computation: elliptic sections, whose crest has the radius of the bead that stands for half of one. */
    @ParameterizedTest
    @CsvSource({".10, -.21, 60.6", ".15, -.3225, 48.9", ".20, -.44, 41.9", ".25, -.5625, 37.0", ".30, -.69, 33.4"})
    void independent_ellipticSections(double ratio, double coefficient, double knots) {
        double found = new RoundedEdge(ratio, 1 / ratio).least();
        assertEquals(coefficient, found, 5e-6);
        assertEquals(knots, HALF_A_METRE_DOWN.speed(found) / KNOT, 0.06);
    }

    /** Independent computation. */
    @Test
    void independent_cavitationNumber() {
        assertEquals(2.0406, HALF_A_METRE_DOWN.number(10), 5e-5);
    }

    /** A bead as high as its radius is half a circle: -3; a long bead tends to the flat skin. */
    @Test
    void exact_edges() {
        assertEquals(-3, new RoundedEdge(0.01, 0.01).least(), 1e-12);
        assertEquals(0, new RoundedEdge(1e-12, 1).least(), 3e-6);
    }

    @Test
    void law_deeperAndColderIsLater() {
        double here = HALF_A_METRE_DOWN.speed(-0.5);
        assertEquals(true, new Inception(Water.sea(15), 1).speed(-0.5) > here);
        assertEquals(true, new Inception(Water.sea(30), 0.5).speed(-0.5) < here);
        assertEquals(1, HALF_A_METRE_DOWN.number(here) / 0.5, 1e-12);
    }

    @Test
    void badInputIsNamed() {
        assertEquals("depth below the surface is -0.2 m; it must be from 0 to 100 m",
            assertThrows(IllegalArgumentException.class, () -> new Inception(Water.sea(15), -0.2)).getMessage());
        assertEquals("least pressure coefficient is 0.1; it must be below 0",
            assertThrows(IllegalArgumentException.class, () -> HALF_A_METRE_DOWN.speed(0.1)).getMessage());
        assertEquals("yaw of the flow at a fairing is 45.0 deg; it must be from -30 to 30",
            assertThrows(IllegalArgumentException.class, () -> new FairingNose(1, 1, 1, Angle.ofDegrees(45))).getMessage());
    }
}
