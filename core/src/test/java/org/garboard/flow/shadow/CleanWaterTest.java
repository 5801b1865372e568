package org.garboard.flow.shadow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.craft.Sides;
import org.garboard.geometry.Ring;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.offsets.LineKind;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** What wakes leave of a bottom that is wet from x = 4 m to 12 m and 1.5 m to either side. */
class CleanWaterTest {
    private static final Hull HULL = Hull.through(new Forms(0, Forms.even(0, 12, 5)).keel(x -> 0)
        .named(LineKind.CHINE, "Chine", x -> 1.5, x -> 0.5).named(LineKind.SHEER, "Sheer", x -> 1.6, x -> 1.5).table());
    private static final List<PlanRegion> SOLID = List.of(new PlanRegion(new Ring(List.of(Vector2D.of(4, 0), Vector2D.of(12, 0), Vector2D.of(12, 1.5),
        Vector2D.of(4, 1.5))), List.of()));

    private static Shadow shadow(Shedder feature) {
        return assertInstanceOf(Shadow.class, new ShadowCaster(SOLID, new AlongBottom(HULL, Angle.ofDegrees(0)), 1).of(feature));
    }

    private static double area(List<PlanRegion> regions) {
        return regions.stream().mapToDouble(PlanRegion::area).sum();
    }

    /** A drain of 50 mm ahead of the wet bottom: its wake has grown by 150 mm to either side there, and ends 5 m behind it. */
    @Test
    void exact_wakeBeginsWhereTheBottomIsWet() {
        Shadow shadow = shadow(Shedder.point("drain", Sheds.FLUSH, Sides.STARBOARD, 2, 0.7, 0.05));
        double wake = (0.05 + 2 * 0.15) * (7.025 - 4);
        assertEquals(wake, area(shadow.wake()), 1e-9);
        List<PlanRegion> clean = CleanWater.of(SOLID, List.of(shadow));
        assertEquals(2 * 8 * 1.5 - wake, area(clean), 1e-9);
        assertEquals(1, clean.size(), "abaft of its end the water is whole again");
    }

    /** What a propeller draws in is not clean either, to port as to starboard. */
    @Test
    void exact_aheadOfAPropeller() {
        Shadow shadow = shadow(Shedder.box("screw", Sheds.PROPELLER, Sides.BOTH, 12, 0.7, 0.2, 0.6));
        List<PlanRegion> clean = CleanWater.of(SOLID, List.of(shadow));
        assertEquals(2 * (8 * 1.5 - 0.6 * (0.1 + 1)), area(clean), 0.1 * 0.1 * Math.tan(Math.toRadians(6)) * 2 + 1e-9);
        assertFalse(clean.stream().anyMatch(region -> region.contains(11, 0.7) || region.contains(11, -0.7)));
        assertTrue(clean.stream().anyMatch(region -> region.contains(10.8, -0.7)));
    }

    @Test
    void law_largestFirstAndEachKnowsAPlaceWithin() {
        List<PlanRegion> clean = CleanWater.of(SOLID, List.of(shadow(Shedder.along("seam", Sheds.STRAKE, Sides.BOTH,
            List.of(Vector2D.of(4, 0.5), Vector2D.of(12, 0.5)), 0.02))));
        for (int i = 0; i < clean.size(); i++) {
            Vector2D inside = clean.get(i).inside();
            assertTrue(clean.get(i).contains(inside.getX(), inside.getY()));
            assertTrue(i == 0 || clean.get(i).area() <= clean.get(i - 1).area());
        }
        assertEquals(List.of(), CleanWater.of(List.of(), List.of()));
    }

    @Test
    void exact_mirrored() {
        PlanRegion port = SOLID.get(0).mirrored();
        assertTrue(port.contains(5, -1) && !port.contains(5, 1));
        assertEquals(SOLID.get(0).area(), port.area());
    }
}
