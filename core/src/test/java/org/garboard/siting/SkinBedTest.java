package org.garboard.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleBinaryOperator;
import org.garboard.mount.Footprint;
import org.junit.jupiter.api.Test;

/** The bed under a footprint on skins of closed form. */
class SkinBedTest {
    private static final Footprint FOOTPRINT = new Footprint(0.300, 0.140, 0);

    private static Ground ground(DoubleBinaryOperator skin, double draught) {
        LineTrace keel = new LineTrace(x -> 0, x -> skin.applyAsDouble(x, 0), 0, 6);
        LineTrace chine = new LineTrace(x -> 1, x -> skin.applyAsDouble(x, 1), 0, 6);
        return new Ground(skin, new BottomLines(keel, chine, List.of(), List.of(), 0, 6), Obstacles.NONE, draught);
    }

    private static SkinBed fine(DoubleBinaryOperator skin) {
        return SkinBed.fine(ground(skin, 0.5), Lattice.fine(FOOTPRINT));
    }

    private static DoubleBinaryOperator vee(double deadriseDeg) {
        double tangent = Math.tan(Math.toRadians(deadriseDeg));
        return (x, y) -> Math.abs(y) * tangent;
    }

    /** Closed form of the wedge: all along the skin. */
    @Test
    void exact_prismaticV() {
        for (SkinBed bed : List.of(fine(vee(18)), SkinBed.coarse(ground(vee(18), 0.5), Lattice.coarse(FOOTPRINT)))) {
            double cosine = Math.cos(Math.toRadians(18));
            assertTrue(bed.measure(3, 0.400));
            assertEquals(0, bed.gap(), 1e-12);
            assertEquals(Math.toRadians(18), bed.deadrise(), 1e-12);
            assertEquals(0, bed.slope(), 1e-12);
            assertEquals(0.400 / cosine - 0.070, bed.roomToKeel(), 1e-12);
            assertEquals(0.600 / cosine - 0.070, bed.roomToBottomEdge(), 1e-12);
            assertEquals(Double.POSITIVE_INFINITY, bed.roomToKnuckle());
            assertEquals(2.85, bed.roomToEnds(), 1e-12);
            assertEquals(0.5 - (0.400 / cosine + 0.070) * Math.sin(Math.toRadians(18)), bed.immersion(), 1e-12);
        }
    }

    /** A plane that rises both ways: the footprint's axes are square to each other in it. */
    @Test
    void exact_slopingPlane() {
        double p = 0.08;
        double q = 0.4;
        SkinBed bed = fine((x, y) -> 0.1 + p * x + q * Math.abs(y));
        assertTrue(bed.measure(3, 0.5));
        assertEquals(0, bed.gap(), 1e-12);
        assertEquals(Math.atan(p), bed.slope(), 1e-12);
        assertEquals(Math.atan(q), bed.deadrise(), 1e-12);
        // the outline's highest corner lies half a length up the long side and half a width up the other
        double up = 0.15 * p / Math.sqrt(1 + p * p) + 0.07 * q / Math.sqrt((1 + p * p) * (1 + p * p + q * q));
        assertEquals(0.5 - (0.1 + p * 3 + q * 0.5) - up, bed.immersion(), 1e-9);
    }

    /** Sagitta of an arc over the half width, R - sqrt(R2 - a2); anywhere on the cylinder the same. */
    @Test
    void exact_cylinder() {
        double radius = 3;
        SkinBed bed = fine((x, y) -> radius - Math.sqrt(radius * radius - y * y));
        double sagitta = radius - Math.sqrt(radius * radius - 0.07 * 0.07);
        assertTrue(bed.measure(3, 0));
        assertEquals(sagitta, bed.gap(), 1e-12);
        for (double y = 0.1; y < 0.9; y += 0.1) {
            assertTrue(bed.measure(3, y));
            assertEquals(sagitta, bed.gap(), 1e-8, "y " + y);
            assertEquals(Math.asin(y / radius), bed.deadrise(), 1e-7, "y " + y);
        }
    }

    /** Sagitta over the half diagonal; anywhere on the sphere the same. */
    @Test
    void exact_sphere() {
        double radius = 8;
        SkinBed bed = fine((x, y) -> radius - Math.sqrt(radius * radius - (x - 3) * (x - 3) - y * y));
        double square = 0.15 * 0.15 + 0.07 * 0.07;
        double sagitta = radius - Math.sqrt(radius * radius - square);
        assertTrue(bed.measure(3, 0));
        assertEquals(sagitta, bed.gap(), 1e-12);
        assertTrue(bed.measure(2.2, 0.6));
        assertEquals(sagitta, bed.gap(), 1e-8);
        // buttock slope and deadrise of the normal through the sphere's centre
        double down = Math.sqrt(radius * radius - 0.64 - 0.36);
        assertEquals(Math.atan(-0.8 / down), bed.slope(), 1e-7);
        assertEquals(Math.atan(0.6 / down), bed.deadrise(), 1e-7);
    }

    /** Rounded corners bring the farthest point in: half diagonal less what the corners lose. */
    @Test
    void exact_sphereUnderRoundedCorners() {
        double radius = 8;
        DoubleBinaryOperator skin = (x, y) -> radius - Math.sqrt(radius * radius - (x - 3) * (x - 3) - y * y);
        for (double corner : new double[] {0.02, 0.05, 0.07}) {
            Footprint rounded = new Footprint(0.300, 0.140, corner);
            double reach = Math.hypot(0.15 - corner, 0.07 - corner) + corner;
            double sagitta = radius - Math.sqrt(radius * radius - reach * reach);
            SkinBed fine = SkinBed.fine(ground(skin, 0.5), Lattice.fine(rounded));
            SkinBed coarse = SkinBed.coarse(ground(skin, 0.5), Lattice.coarse(rounded));
            assertTrue(fine.measure(3, 0) && coarse.measure(3, 0));
            assertEquals(sagitta, fine.gap(), 1e-12);
            assertEquals(sagitta, coarse.gap(), 1e-12);
        }
    }

    /** A round body: the sagitta over its radius. */
    @Test
    void exact_roundBody() {
        double radius = 3;
        Footprint round = new Footprint(0.2, 0.2, 0.1);
        SkinBed bed = SkinBed.fine(ground((x, y) -> radius - Math.sqrt(radius * radius - (x - 3) * (x - 3) - y * y), 0.5),
            Lattice.fine(round));
        assertTrue(bed.measure(3, 0));
        assertEquals(radius - Math.sqrt(radius * radius - 0.01), bed.gap(), 1e-12);
    }

    /** A footprint that reaches over the keel line or the chine has less than no room. */
    @Test
    void exact_acrossALineRoomIsNegative() {
        double cosine = Math.cos(Math.toRadians(18));
        SkinBed bed = fine(vee(18));
        assertTrue(bed.measure(3, 0.02));
        assertTrue(bed.roomToKeel() < 0);
        assertTrue(bed.measure(3, 1.0));
        assertEquals(-0.070 * cosine, bed.roomToBottomEdge(), 1e-9);
    }

    /** The plane turns with the side: a place given with the wrong sign of y shows the wrong deadrise. */
    @Test
    void exact_portLeansTheOtherWay() {
        SkinBed bed = fine(vee(18));
        assertTrue(bed.measure(3, -0.4));
        assertEquals(Math.toRadians(-18), bed.deadrise(), 1e-12);
    }

    @Test
    void law_offTheSkinNothingIsMeasured() {
        SkinBed bed = fine((x, y) -> Math.abs(y) > 0.5 ? Double.NaN : 0);
        assertFalse(bed.measure(3, 0.45));
        assertFalse(bed.measure(3, 0.6));
        assertTrue(bed.measure(3, 0.4));
    }
}
