package org.garboard.cutout.skin;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.garboard.cutout.CannotBeBuilt;
import org.garboard.hull.Hull;
import org.garboard.siting.Boats;
import org.garboard.solid.Loop;
import org.junit.jupiter.api.Test;

/** What keeps a round part of 100 mm radius off the edges of a V bottom of 20 deg, its chine 1 m out. */
class SmoothPieceTest {
    private static final double R = 0.1;
    private static final double COS = Math.cos(Math.toRadians(20));
    private static final Hull VEE = Boats.prismaticV(20);

    private static void require(Hull hull, double x, double y, double radius) throws CannotBeBuilt {
        new SmoothPiece(hull, x, y).require(AxisFrame.squareToSkin(new HullSkin(hull), x, y), Loop.circle(0, 0, radius, 1e-5), "the plate");
    }

    private static String refused(Hull hull, double x, double y, double radius) {
        return assertThrows(CannotBeBuilt.class, () -> require(hull, x, y, radius)).getMessage();
    }

    /** Over by R cos 20 deg - 50 mm and 1 mm kept clear; moved by so much, up to a mark, it serves, a mark less it does not. */
    @Test
    void exact_offTheKeelLine() {
        assertEquals("the plate reaches over the keel line by 45.0 mm; what works: a site at least 50 mm farther outboard", refused(VEE, 3, 0.05, R));
        assertEquals(refused(VEE, 3, 0.05, R), refused(VEE, 3, -0.05, R));
        assertDoesNotThrow(() -> require(VEE, 3, 0.1, R));
        assertDoesNotThrow(() -> require(VEE, 3, R * COS + 0.0011, R));
        assertEquals("the plate reaches over the keel line by 0.1 mm; what works: a site at least 5 mm farther outboard",
            refused(VEE, 3, R * COS + 0.0009, R));
    }

    @Test
    void exact_offTheChine() {
        assertEquals("the plate reaches over Chine by 45.0 mm; what works: a site at least 50 mm farther inboard", refused(VEE, 3, 0.95, R));
        assertDoesNotThrow(() -> require(VEE, 3, 1 - R * COS - 0.0011, R));
        assertEquals("the plate reaches over Chine by 0.1 mm; what works: a site at least 5 mm farther inboard",
            refused(VEE, 3, -(1 - R * COS - 0.0009), R));
    }

    /** Too large for the half of a bottom: by what it lacks on both sides together. */
    @Test
    void exact_betweenKeelAndChine() {
        String said = refused(VEE, 3, 0.5, 0.54);
        double over = 0.54 * COS - 0.5 + 0.001;
        assertEquals(String.format(java.util.Locale.ROOT, "the plate reaches over the keel line by %.1f mm and over Chine by %.1f mm; what works: "
            + "a part smaller by %.0f mm", 1000 * over, 1000 * over, Math.ceil(2000 * over)), said);
    }

    @Test
    void law_aKnuckleBoundsBothSides() {
        Hull broken = Boats.brokenV(24, 14);
        double knuckle = broken.lines().get(1).y(3);
        String inner = refused(broken, 3, knuckle - 0.05, R);
        String outer = refused(broken, 3, knuckle + 0.05, R);
        assertEquals("farther inboard", inner.substring(inner.lastIndexOf(" mm ") + 4));
        assertEquals("farther outboard", outer.substring(outer.lastIndexOf(" mm ") + 4));
        assertDoesNotThrow(() -> require(broken, 3, knuckle - 0.1, R));
        assertDoesNotThrow(() -> require(broken, 3, knuckle + 0.1, R));
    }

    @Test
    void badInput_offTheTable() {
        assertEquals("the plate runs off the skin; what works: a smaller part, or a site farther inside the bottom", refused(VEE, 0.05, 0.5, R));
    }
}
