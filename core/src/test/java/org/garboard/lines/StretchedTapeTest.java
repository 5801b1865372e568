package org.garboard.lines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.offsets.LineKind;
import org.junit.jupiter.api.Test;

/** Tapes over forms whose geodesics are known: unrolled, unfolded, and great circles. */
class StretchedTapeTest {
    private static final double R = 5;

    private static double sphere(double x, double y) {
        return R - Math.sqrt(R * R - x * x - y * y);
    }

    private static Hull sphereHull() {
        Forms forms = new Forms(0, Forms.even(-1.5, 1.5, 33)).keel(x -> sphere(x, 0))
            .named(LineKind.CHINE, "Chine", x -> 1.5, x -> sphere(x, 1.5))
            .named(LineKind.SHEER, "Sheer", x -> 1.6, x -> 1.5);
        for (int i = 1; i < 12; i++) {
            forms.buttock(0.125 * i, StretchedTapeTest::sphere);
        }
        return Hull.through(forms.table());
    }

    private static Hull cylinder() {
        Forms forms = new Forms(0, 0, 2, 5, 7).keel(x -> 0).named(LineKind.SHEER, "Sheer", x -> 2, x -> 2);
        for (int i = 1; i < 32; i++) {
            double turn = Math.PI / 2 * i / 32;
            if (i < 16) {
                forms.buttock(2 * Math.sin(turn), (x, y) -> 2 - 2 * Math.cos(turn));
            } else {
                forms.waterline(2 - 2 * Math.cos(turn), (x, z) -> 2 * Math.sin(turn));
            }
        }
        return Hull.through(forms.table());
    }

    /** Bottom of plane sides rising 1 in 4 to 1 m out, then 1 in 1 to 1.5 m. */
    private static Hull twoPlanes() {
        return Hull.through(new Forms(0, Forms.even(0, 6, 4)).keel(x -> 0)
            .named(LineKind.CHINE, "Chine", x -> 1, x -> 0.25)
            .named(LineKind.SHEER, "Sheer", x -> 1.5, x -> 0.75).table());
    }

    private static Vector3D on(Hull hull, double x, double y) {
        return Vector3D.of(x, y, hull.height(x, y));
    }

    private static TapeRun tape(Hull hull, double x1, double y1, double x2, double y2) {
        return StretchedTape.between(hull, on(hull, x1, y1), on(hull, x2, y2)).orElseThrow();
    }

    /** A V laid flat over its keel: the plan stretched by 1/cos of the deadrise. */
    @Test
    void exact_acrossTheKeelOfAV() {
        TapeRun tape = tape(twoPlanes(), 1, -0.3, 3.7, 0.9);
        assertEquals(Math.hypot(2.7, 1.2 * Math.hypot(1, 0.25)), tape.length(), 1e-9);
        assertTrue(tape.touches());
        assertTrue(tape.length() > tape.straight() + 0.01);
    }

    /** Unfolded over the chine the tape is straight, in plan it is bent there. */
    @Test
    void exact_acrossAChine() {
        TapeRun tape = tape(twoPlanes(), 1, 0.2, 4, 1.4);
        assertEquals(Math.hypot(3, 0.8 * Math.hypot(1, 0.25) + 0.4 * Math.sqrt(2)), tape.length(), 2e-6);
        assertTrue(tape.touches());
    }

    /** A cylinder unrolls: length along by arc round. */
    @Test
    void exact_roundACylinder() {
        double arc = 2 * (Math.asin(0.6) - Math.asin(0.05));
        TapeRun tape = tape(cylinder(), 1, 0.1, 4, 1.2);
        assertEquals(Math.hypot(3, arc), tape.length(), 1e-5);
        assertTrue(tape.touches());
    }

    /** Great circle: radius by the angle between the two radii. */
    @Test
    void exact_greatCircleOfASphere() {
        Hull hull = sphereHull();
        Vector3D centre = Vector3D.of(0, 0, R);
        Vector3D a = on(hull, -1.2, 0.1);
        Vector3D b = on(hull, 1.1, 1.3);
        double angle = a.subtract(centre).angle(b.subtract(centre));
        assertEquals(R * angle, StretchedTape.between(hull, a, b).orElseThrow().length(), 2e-6);
        Vector3D c = on(hull, 1.1, -1.3);
        assertEquals(R * a.subtract(centre).angle(c.subtract(centre)), StretchedTape.between(hull, a, c).orElseThrow().length(), 2e-6);
    }

    /** A keel line that rises forward and aft of a hollow, a circle of 20 m seen from below: the tape is its chord. */
    @Test
    void exact_straightOverAHollow() {
        double radius = 20;
        Hull hollow = Hull.through(new Forms(0, Forms.even(-2, 2, 17)).keel(x -> Math.sqrt(radius * radius - x * x) - radius + 1)
            .named(LineKind.CHINE, "Chine", x -> 1, x -> Math.sqrt(radius * radius - x * x) - radius + 1)
            .named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 2).table());
        TapeRun tape = tape(hollow, -1.5, 0.5, 1.5, 0.5);
        assertEquals(3, tape.length(), 1e-9);
        assertFalse(tape.touches());
        assertEquals(radius - Math.sqrt(radius * radius - 1.5 * 1.5), tape.standsOff(), 1e-5);
        assertEquals(0, tape.standsOffAt().getX(), 0.01);
    }

    /** The same tape read from its other end, and on the other side. */
    @Test
    void law_fromEitherEndAndOnEitherSide() {
        Hull hull = sphereHull();
        double there = tape(hull, -1.2, 0.2, 1, 1.2).length();
        assertEquals(there, tape(hull, 1, 1.2, -1.2, 0.2).length(), 1e-8);
        assertEquals(there, tape(hull, -1.2, -0.2, 1, -1.2).length(), 1e-8);
    }

    @Test
    void badInput_offTheSkin() {
        Hull hull = twoPlanes();
        assertEquals(Optional.empty(), StretchedTape.between(hull, on(hull, 1, 0.1), Vector3D.of(8, 0.1, 0)));
        assertEquals(Optional.empty(), StretchedTape.between(hull, on(hull, 1, 0.1), on(hull, 1, 0.1)));
    }
}
