package org.garboard.hull;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.stream.IntStream;
import org.garboard.offsets.LineKind;
import org.junit.jupiter.api.Test;

/** A box keel is skin: its bottom, its side and its top edge are panels and lines like any other. */
class BoxKeelTest {
    private static final double[] STATIONS = {0, 1, 2.5, 4, 5, 6};

    private static Forms form(double leastCount, double atTop) {
        return new Forms(leastCount, STATIONS).keel(x -> 0)
            .halfSiding(x -> 0.1)
            .named(LineKind.KEEL_TOP, "Top of keel", x -> atTop, x -> 0.3)
            .named(LineKind.CHINE, "Chine", x -> 1.1, x -> 0.5)
            .named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 1.5);
    }

    private static Hull upright() {
        return Hull.through(form(0, 0.1).table());
    }

    @Test
    void exact_heightsGirthsAndDeadriseBesideAVerticalSide() {
        Hull hull = upright();
        assertEquals(List.of("Keel", "Half-siding", "Top of keel", "Chine", "Sheer"), hull.lines().stream().map(HullLine::name).toList());
        assertEquals(0, hull.height(3.3, 0.05), 1e-12);
        assertEquals(0, hull.height(3.3, 0.1), 1e-12);
        assertEquals(0.3 + 0.2 * 0.4, hull.height(3.3, 0.5), 1e-12);
        assertEquals(0, hull.at(3.3, 0.1).orElseThrow().deadrise().radians(), 1e-12);
        assertEquals(Math.atan(0.2), hull.at(3.3, -0.5).orElseThrow().deadrise().radians(), 1e-12);
        assertEquals(0.05, hull.girth(3.3, 0.05), 1e-12);
        assertEquals(0.1, hull.girth(3.3, 0.1), 1e-12);
        assertEquals(0.1 + 0.3 + 0.4 * Math.hypot(1, 0.2), hull.girth(3.3, 0.5), 1e-12);
    }

    /** The side of the keel has no single height; its normal lies athwart. */
    @Test
    void exact_normalOfAVerticalSide() {
        double[] out = new double[Panel.POINT_SIZE];
        upright().panels().get(1).evaluate(2, 0.5, out, 0);
        assertEquals(0.15, out[Panel.Z], 1e-12);
        assertEquals(1, out[Panel.NY], 1e-12);
        assertEquals(0, out[Panel.NZ], 1e-12);
        assertEquals(0, out[Panel.K1], 1e-9);
        assertEquals(0, out[Panel.K2], 1e-9);
    }

    /** A grid that has a node on the side itself reads the keel's bottom there. */
    @Test
    void exact_gridAcrossAVerticalSide() {
        double[] heights = new double[8];
        upright().heights(3, 0.05, heights, 0, heights.length);
        double[] expected = IntStream.range(0, 8).mapToDouble(i -> i <= 2 ? 0 : 0.3 + 0.2 * (0.05 * i - 0.1)).toArray();
        for (int i = 0; i < 8; i++) {
            assertEquals(expected[i], heights[i], 1e-12, "node " + i);
        }
    }

    @Test
    void exact_curvesCrossAVerticalSide() {
        Hull hull = upright();
        assertEquals(0.1, hull.halfBreadth(3, 0.2).orElseThrow(), 1e-12);
        assertEquals(1, new HullCurves(hull).waterline(0.2, 1e-4).stream().filter(curve -> curve.panel() == 1).count());
        assertEquals(1, new HullCurves(hull).buttock(0.5, 1e-4).size());
        assertEquals(4, new HullCurves(hull).section(3, 1e-4).size());
    }

    /** A keel that is wider at its top leans its sides; one that is narrower there hides them from below. */
    @Test
    void exact_sidesThatLean() {
        Hull out = Hull.through(form(0, 0.2).table());
        assertEquals(0.15, out.height(3, 0.15), 1e-12);
        assertEquals(Math.atan(3), out.at(3, 0.15).orElseThrow().deadrise().radians(), 1e-12);
        Hull in = Hull.through(form(0, 0.06).table());
        assertEquals(0, in.height(3, 0.08), 1e-12);
        assertEquals(0.3 + 0.2 * (0.2 - 0.06) / 1.04, in.height(3, 0.2), 1e-12);
    }

    /** Rounded to the millimetre and faired, with readings on the keel's side and beside it. */
    @Test
    void law_fairedWithinRounding() {
        Hull hull = Hull.faired(form(0.001, 0.1).waterline(0.1, (x, z) -> 0.1).waterline(0.2, (x, z) -> 0.1)
            .buttock(0.05, (x, y) -> 0).buttock(0.6, (x, y) -> 0.3 + 0.2 * (y - 0.1)).table());
        for (double x = 0; x <= 6; x += 0.25) {
            assertEquals(0, hull.height(x, 0.05), 0.0006, "bottom of the keel at " + x);
            assertEquals(0.1, hull.halfBreadth(x, 0.15).orElseThrow(), 0.0006, "side of the keel at " + x);
            assertEquals(0.4, hull.height(x, 0.6), 0.0006, "bottom at " + x);
            assertTrue(hull.girth(x, 0.6) > 0.1 + 0.3 + 0.5);
        }
    }

    /** Planking of one thickness all round sets the box out by itself. */
    @Test
    void exact_outsideOfABox() {
        Hull hull = Hull.through(form(0, 0.1).inside(0.02).table());
        assertEquals(-0.02, hull.height(3, 0.05), 1e-6);
        assertEquals(0.12, hull.halfBreadth(3, 0.1).orElseThrow(), 1e-6);
    }
}
