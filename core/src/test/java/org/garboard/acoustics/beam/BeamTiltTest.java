package org.garboard.acoustics.beam;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

class BeamTiltTest {
    private static final Angle NONE = Angle.ofDegrees(0);

    @Test
    void exact_anElementThatLeansByTheDeadriseLooksStraightDown() {
        BeamTilt tilt = tilt(20, 0, 20, 0);
        assertEquals(0, tilt.total().degrees(), 1e-9);
        assertEquals("looks straight down", tilt.words());
    }

    @Test
    void exact_anUprightElementLooksOffByTheDeadrise() {
        assertEquals(17, tilt(17, 0, 0, 0).outboard().degrees(), 1e-9);
        assertEquals("looks 17.0 deg away from the keel", tilt(17, 0, 0, 0).words());
        assertEquals("looks 8.0 deg towards the keel", tilt(12, 0, 20, 0).words());
    }

    /** Turned round, the error doubles. */
    @Test
    void exact_turnedRoundTheLeanAddsToTheDeadrise() {
        assertEquals(40, tilt(20, 0, -20, 0).outboard().degrees(), 1e-9);
    }

    @Test
    void exact_runningTrimLooksAheadAndARisingBottomAft() {
        assertEquals(-4, tilt(0, 0, 0, 4).aft().degrees(), 1e-9);
        assertEquals(3, tilt(0, 3, 0, 0).aft().degrees(), 1e-9);
        assertEquals(0, tilt(0, 4, 0, 4).total().degrees(), 1e-9);
        assertEquals("looks 2.0 deg away from the keel and 4.0 deg ahead", tilt(20, 0, 18, 4).words());
    }

    @Test
    void exact_trimTurnsAPlumbBeamByItself() {
        for (double trim = 0; trim < 10; trim += 0.7) {
            assertEquals(trim, tilt(18, 0, 18, trim).total().degrees(), 1e-9);
            // a beam square to the skin and off by 18 deg: spherical law of cosines
            double both = Math.toDegrees(Math.acos(Math.cos(Math.toRadians(18)) * Math.cos(Math.toRadians(trim))));
            assertEquals(both, tilt(18, 0, 0, trim).total().degrees(), 1e-9);
        }
    }

    @Test
    void exact_spacingOfTheLowerBody() {
        Disc disc = new Disc(0.075, 0.03);
        Spacing level = Spacing.between(disc, Angle.ofDegrees(29), NONE, 0);
        assertEquals(Spacing.LEAST_BETWEEN_BODIES, level.least());
        assertEquals(false, level.besideNearField());
        Spacing lower = Spacing.between(disc, Angle.ofDegrees(30), Angle.ofDegrees(15), 0.4);
        assertEquals(0.4, lower.least(), 1e-12);
        assertEquals(0, Spacing.between(disc, Angle.ofDegrees(10), Angle.ofDegrees(-15), 0.4).edge());
        assertTrue(Spacing.between(disc, Angle.ofDegrees(30), NONE, 0.1).besideNearField());
        assertThrows(IllegalArgumentException.class, () -> Spacing.between(disc, Angle.ofDegrees(80), Angle.ofDegrees(15), 0.1));
    }

    private static BeamTilt tilt(double deadrise, double slope, double inclination, double trim) {
        return BeamTilt.of(Angle.ofDegrees(deadrise), Angle.ofDegrees(slope), Angle.ofDegrees(inclination), Angle.ofDegrees(trim));
    }
}
