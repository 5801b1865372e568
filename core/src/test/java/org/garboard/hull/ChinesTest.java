package org.garboard.hull;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.garboard.offsets.LineKind;
import org.junit.jupiter.api.Test;

/** Bottoms with several knuckles, in closed form: flat keel, chine flat, reverse chine, tumblehome. */
class ChinesTest {
    private static final double[] STATIONS = {0, 1, 2, 3, 4, 5};

    /** Keel 0.1 wide a side, bottom at 0.3, chine flat 0.2 wide, topsides that fall home. */
    private static Hull flats() {
        return Hull.through(new Forms(0, STATIONS).keel(x -> 0.02 * x)
                .halfSiding(x -> 0.1)
                .named(LineKind.CHINE, "Chine inner", x -> 1.1, x -> 0.02 * x + 0.3)
                .named(LineKind.CHINE, "Chine outer", x -> 1.3, x -> 0.02 * x + 0.3)
                .named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 1.3).table());
    }

    @Test
    void exact_flatKeelAndChineFlat() {
        Hull hull = flats();
        assertEquals(4, hull.panels().size());
        assertEquals(0.06, hull.height(3, 0.05), 1e-12);
        assertEquals(0, hull.at(3, 0.05).orElseThrow().deadrise().radians(), 1e-12);
        assertEquals(0.06 + 0.3 * 0.4, hull.height(3, 0.5), 1e-12);
        assertEquals(Math.atan(0.3), hull.at(3, 0.5).orElseThrow().deadrise().radians(), 1e-12);
        assertEquals(0.36, hull.height(3, 1.2), 1e-12);
        assertEquals(0, hull.at(3, 1.2).orElseThrow().deadrise().radians(), 1e-12);
        assertEquals("Chine outer", hull.bottomEdge().name());
        assertEquals(0.1 + Math.hypot(1, 0.3) + 0.1, hull.girth(3, 1.2), 1e-12);
    }

    /** At a knuckle the inboard face answers. */
    @Test
    void law_inboardFaceAtAKnuckle() {
        Hull hull = flats();
        assertEquals(Math.atan(0.3), hull.at(3, 1.1).orElseThrow().deadrise().radians(), 1e-9);
        assertEquals(0, hull.at(3, 0.1).orElseThrow().deadrise().radians(), 1e-9);
    }

    /** Where topsides hang over the flat, the lowest skin answers. */
    @Test
    void exact_tumblehomeLiesAbove() {
        Hull hull = flats();
        assertEquals(0.36, hull.height(3, 1.25), 1e-12);
        assertTrue(Double.isNaN(hull.height(3, 1.31)));
        assertEquals(1.25, hull.halfBreadth(3, 0.83).orElseThrow(), 1e-9);
    }

    @Test
    void exact_reverseChine() {
        Hull hull = Hull.through(new Forms(0, STATIONS).keel(x -> 0)
                .named(LineKind.CHINE, "Chine inner", x -> 1.0, x -> 0.4)
                .named(LineKind.CHINE, "Chine outer", x -> 1.2, x -> 0.36)
                .named(LineKind.SHEER, "Sheer", x -> 1.4, x -> 1.3).table());
        SkinPoint point = hull.at(2.5, 1.1).orElseThrow();
        assertEquals(0.38, point.z(), 1e-12);
        assertEquals(-Math.atan(0.2), point.deadrise().radians(), 1e-12);
        assertTrue(point.nz() < 0 && point.ny() < 0, "normal into the water, turned inboard");
        assertEquals(2, new HullCurves(hull).waterline(0.38, 1e-4).stream().filter(c -> c.panel() < 2).count());
    }
}
