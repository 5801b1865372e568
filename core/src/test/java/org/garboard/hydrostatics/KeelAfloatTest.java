package org.garboard.hydrostatics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import org.garboard.appendage.Keel;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Slabs below a V bottom whose rabbet lies at z = 0, 0.1 m off the centreline; 8 m long. */
class KeelAfloatTest {
    private static final double[] STATIONS = {0, 2, 3, 5, 6, 8};

    private static OffsetTable table(DoubleUnaryOperator bottom, DoubleUnaryOperator siding) {
        return new Forms(0, STATIONS).row(LineKind.KEEL, "Rabbet", Measure.HEIGHT, x -> 0)
            .row(LineKind.RABBET, "Half-siding at rabbet", Measure.HALF_BREADTH, x -> 0.1)
            .named(LineKind.KEEL_BOTTOM, "Keel bottom", siding, bottom)
            .named(LineKind.CHINE, "Chine", x -> 1.1, x -> 0.2)
            .named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 1.2).table();
    }

    private static KeelAfloat afloat(OffsetTable table, WaterSurface water) {
        return KeelAfloat.of(Keel.of(table, Hull.through(table)).orElseThrow(), water);
    }

    private static DoubleUnaryOperator from2To6(DoubleUnaryOperator value) {
        return x -> x < 2 || x > 6 ? Double.NaN : value.applyAsDouble(x);
    }

    /** 4 m long, 0.2 m broad, 0.5 m deep. */
    @Test
    void exact_box() {
        OffsetTable table = table(from2To6(x -> -0.5), from2To6(x -> 0.1));
        KeelAfloat keel = afloat(table, WaterSurface.level(0.15));
        assertEquals(0.4, keel.volume(), 1e-12);
        assertEquals(4, keel.lcb(), 1e-12);
        assertEquals(-0.25, keel.vcb(), 1e-12);
        assertEquals(2 * 4 * 0.5 + 4 * 0.2 + 2 * 0.2 * 0.5, keel.wetted(), 1e-12, "sides, bottom, ends");
        assertEquals(0.8, keel.covered(), 1e-12);
        assertEquals(0, keel.waterplane(), 0);
    }

    /** With hull and keel together: the V's area and the box, the lid under the box not wetted. */
    @Test
    void exact_boxUnderItsHull() {
        OffsetTable table = table(from2To6(x -> -0.5), from2To6(x -> 0.1));
        Hydrostatics hull = assertInstanceOf(Hydrostatics.class, Hydrostatics.of(Hull.through(table), WaterSurface.level(0.1)));
        assertEquals(8 * (0.2 * 0.1 + 0.1 * 0.5), hull.volume(), 1e-9, "a slab over the lid, and the V");
        assertEquals(8 * 2 * (0.1 + Math.hypot(0.5, 0.1)), hull.wettedSkin(), 1e-9);
        Keel keel = Keel.of(table, Hull.through(table)).orElseThrow();
        Together together = Together.of(hull, KeelAfloat.of(keel, hull.water()));
        assertEquals(8 * 0.07 + 0.4, together.volume(), 1e-9);
        assertEquals(4, together.lcb(), 1e-9);
        double v = 0.2 * 0.1 * 0.05 + 0.05 * 0.1 * 2 / 3;
        assertEquals((8 * v - 0.4 * 0.25) / (0.56 + 0.4), together.vcb(), 1e-9);
        assertEquals(8 * 2 * (0.1 + Math.hypot(0.5, 0.1)) - 0.8 + 4 + 0.8 + 0.2, together.wetted(), 1e-9);
    }

    /** Its depth grows from 0.1 m to 0.5 m in 8 m. */
    @Test
    void exact_wedge() {
        KeelAfloat keel = afloat(table(x -> -0.1 - 0.05 * x, x -> 0.1), WaterSurface.level(0.15));
        assertEquals(0.2 * 8 * 0.3, keel.volume(), 1e-12);
        assertEquals((0.1 * 32 + 0.05 * 512 / 3) / 2.4, keel.lcb(), 1e-12);
        double squares = (Math.pow(0.5, 3) - Math.pow(0.1, 3)) / 3 / 0.05;
        assertEquals(-squares / 2 / 2.4, keel.vcb(), 1e-12);
        assertEquals(2 * 2.4 + 0.2 * 8 * Math.hypot(1, 0.05) + 0.2 * 0.6, keel.wetted(), 1e-12);
    }

    /** Sides that lean, from 0.1 m at the rabbet to 0.04 m at the bottom, half a metre down: a trapeze. */
    @Test
    void exact_trapeze() {
        KeelAfloat keel = afloat(table(from2To6(x -> -0.5), from2To6(x -> 0.04)), WaterSurface.level(0.15));
        assertEquals(4 * 0.14 * 0.5, keel.volume(), 1e-12);
        assertEquals(-0.5 / 3 * (0.1 + 2 * 0.04) / 0.14, keel.vcb(), 1e-12);
        assertEquals(2 * 4 * Math.hypot(0.5, 0.06) + 4 * 0.08 + 2 * 0.14 * 0.5, keel.wetted(), 1e-12);
    }

    /** Water that crosses the box from its bottom at x = 2 to its top at x = 6: half of it is wet, and the rabbet dry. */
    @Test
    void exact_trimmed() {
        double slope = 0.5 / 4;
        WaterSurface water = new WaterSurface(-0.25, 4, Angle.ofRadians(Math.atan(slope)));
        KeelAfloat keel = afloat(table(from2To6(x -> -0.5), from2To6(x -> 0.1)), water);
        assertEquals(0.2, keel.volume(), 1e-9);
        assertEquals(2 + 4 * 2.0 / 3, keel.lcb(), 1e-9);
        assertEquals(-0.5 + 0.5 / 3, keel.vcb(), 1e-9);
        assertEquals(0, keel.covered(), 1e-9);
        assertEquals(0.8 * Math.hypot(1, slope), keel.waterplane(), 1e-9);
    }

    @Test
    void exact_whereItHangs() {
        OffsetTable table = table(from2To6(x -> -0.1 * x), from2To6(x -> 0.1));
        Hull hull = Hull.through(table);
        Keel keel = Keel.of(table, hull).orElseThrow();
        assertTrue(keel.isOver(4, 0.05) && keel.isOver(4, -0.1));
        assertFalse(keel.isOver(4, 0.11) || keel.isOver(1.9, 0) || keel.isOver(6.1, 0));
        assertEquals(new Keel.Knee(6, -0.6000000000000001, 0.1), keel.lowest());
        assertEquals(0.35, keel.depth(3.5), 1e-12);
        assertEquals(0, hull.girth(4, 0.05), 0);
        assertEquals(0.4 * Math.hypot(1, 0.2), hull.girth(4, 0.5), 1e-12, "from the rabbet");
        assertEquals(0.08, hull.height(4, 0.5), 1e-12);
    }
}
