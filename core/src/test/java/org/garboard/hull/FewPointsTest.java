package org.garboard.hull;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.PanelOffsets;
import org.garboard.offsets.SectionPoint;
import org.garboard.offsets.TableLine;
import org.junit.jupiter.api.Test;

/** Tables that leave much open: whatever the readings do not settle, a surface comes of them. Millimetres. */
class FewPointsTest {
    private static final double MILLIMETRE = 1e-3;
    private static final double BLANK = Double.NaN;

    private static DoubleUnaryOperator mm(double... readings) {
        return x -> readings[(int) x] * MILLIMETRE;
    }

    private static DoubleBinaryOperator cells(double... readings) {
        return (x, level) -> mm(readings).applyAsDouble(x);
    }

    /** Of the points that stand for a reading: two that are one have but one of them. */
    private static double worstReading(Hull hull, OffsetTable table) {
        double worst = 0;
        for (PanelOffsets panel : PanelOffsets.of(table)) {
            for (int j = 0; j < table.stations().size(); j++) {
                for (SectionPoint point : panel.stations().get(j).subList(1, panel.stations().get(j).size() - 1)) {
                    TableLine line = table.lines().get(point.line());
                    double x = table.stations().get(j).x();
                    worst = Math.max(worst, line.measure() == Measure.HEIGHT
                        ? Math.abs(hull.height(x, point.y()) - point.z())
                        : Math.abs(hull.halfBreadth(x, point.z()).orElse(Double.NaN) - point.y()));
                }
            }
        }
        return worst;
    }

    private static void assertDrawn(OffsetTable table) {
        assertEquals(0, worstReading(Hull.through(table), table), 1e-5);
        double worst = worstReading(Hull.faired(table), table);
        assertTrue(worst <= MILLIMETRE / 2, "faired: " + worst);
    }

    @Test
    void law_threeStationsWithBlanks() {
        assertDrawn(new Forms(MILLIMETRE, 0, 1, 2)
            .keel(mm(310, 64, 0))
            .halfSiding(mm(15, 50, 50))
            .named(LineKind.CHINE, "Chine", mm(50, 496, 505), mm(388, 204, 142))
            .named(LineKind.SHEER, "Sheer", mm(82, 806, 820), mm(960, 1234, 1181))
            .buttock(0.25, cells(BLANK, 134, 70))
            .buttock(0.49, cells(BLANK, 202, BLANK))
            .waterline(0.4, cells(51, 555, BLANK))
            .waterline(0.7, cells(68, 634, 674))
            .waterline(1.0, cells(BLANK, 736, 765))
            .table());
    }

    /** At station 3 the buttock crosses the keel's panel two millimetres inboard of the chine. */
    @Test
    void law_aPointBesideItsChine() {
        assertDrawn(new Forms(MILLIMETRE, 0, 1, 2, 3, 4, 5)
            .keel(mm(482, 408, 251, 103, 32, 0))
            .named(LineKind.CHINE, "Chine", mm(65, 180, 439, 632, 647, 647), mm(543, 480, 345, 214, 144, 112))
            .named(LineKind.SHEER, "Sheer", mm(140, 388, 947, 1364, 1395, 1395), mm(1453, 1537, 1734, 1850, 1798, 1767))
            .buttock(0.63, cells(BLANK, BLANK, BLANK, 213, BLANK, 109))
            .waterline(0.7, cells(109, 307, 760, 1110, BLANK, 1157))
            .table());
    }

    /** A station whose sections are pinched to all but nothing. */
    @Test
    void law_pinchedAmidships() {
        assertDrawn(new Forms(MILLIMETRE, 0, 1, 2, 3, 4)
            .keel(mm(300, 100, 50, 20, 0))
            .named(LineKind.CHINE, "Chine", mm(100, 500, 2, 900, 900), mm(600, 500, 52, 300, 300))
            .named(LineKind.SHEER, "Sheer", mm(200, 700, 4, 1000, 1000), mm(1200, 1150, 1100, 1050, 1000))
            .waterline(0.9, cells(150, 600, 3, 985, 995))
            .table());
    }

    private static Forms flared(double halfBreadthAtTwo) {
        return new Forms(MILLIMETRE, 0, 1, 2)
            .keel(mm(0, 0, 0))
            .named(LineKind.CHINE, "Chine", mm(800, 800, 800), mm(200, 200, 200))
            .named(LineKind.SHEER, "Sheer", mm(1000, 1000, 1000), mm(1000, 1000, 1000))
            .waterline(0.6, cells(900, 900, halfBreadthAtTwo));
    }

    /**
     * What solvers and fairing leave is looked at once more: no surface strays from the table unnoticed. A
     * side that leans 1 in 4 passes a point 3 mm out at 3 mm times the cosine.
     */
    @Test
    void badInput_strayFromAReadingIsRefused() {
        OffsetTable table = flared(900).table();
        OffsetTable other = flared(903).table();
        Hull hull = Hull.faired(table);
        KeptReadings kept = new KeptReadings(other, MILLIMETRE / 2);
        assertEquals("no surface was found that keeps to the table: at station 2 (x = 2.000 m), half-breadth"
            + " 0.9030 m and height 0.6000 m, it comes out 2.910 mm off, where at most 0.500 mm is allowed; compare that"
            + " station with its neighbours, and put more stations where the shape changes fast",
            assertThrows(HullNotDrawn.class, () -> kept.check(hull.panels())).getMessage());
        new KeptReadings(table, MILLIMETRE / 2).check(hull.panels());
    }

    /** 199 buttocks in a metre, nearer together than a strip that is faired would part. */
    @Test
    void law_exactThroughReadingsFiveMillimetresApart() {
        Forms forms = new Forms(0, 0, 2, 4).keel(x -> hollow(0))
                .named(LineKind.SHEER, "Sheer", x -> 1, x -> hollow(1));
        for (int i = 1; i < 200; i++) {
            forms.buttock(0.005 * i, (x, y) -> hollow(y));
        }
        OffsetTable table = forms.table();
        assertEquals(0, worstReading(Hull.through(table), table), 1e-8);
    }

    private static double hollow(double y) {
        return 0.25 + 0.5 * y - 0.5 * Math.hypot(y - 0.5, 0.008);
    }
}
