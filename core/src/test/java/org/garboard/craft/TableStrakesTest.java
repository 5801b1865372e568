package org.garboard.craft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.geometry.Quad;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.TableFault;
import org.garboard.offsets.TableFaults;
import org.junit.jupiter.api.Test;

/** Strakes of the table on a V of 1 in 5, from 1 m to 4 m of its 6 m. */
class TableStrakesTest {
    private static final double[] STATIONS = {0, 1, 2, 3, 4, 5, 6};

    private static double stretch(double x, double value) {
        return x < 1 || x > 4 ? Double.NaN : value;
    }

    private static double inner(double x) {
        return 0.5 - 0.02 * (x - 3) * (x - 3);
    }

    private static Forms bare() {
        return new Forms(0.001, STATIONS).keel(x -> 0)
            .named(LineKind.CHINE, "Chine", x -> 1.1, x -> 0.22)
            .named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 1.2);
    }

    private static Forms striped() {
        return bare()
            .named(LineKind.STRAKE_INNER, "Inner strake, inner", x -> stretch(x, inner(x)), x -> stretch(x, inner(x) / 5))
            .named(LineKind.STRAKE_OUTER, "Inner strake, outer", x -> stretch(x, inner(x) + 0.06), x -> stretch(x, inner(x) / 5))
            .named(LineKind.STRAKE_INNER, "Outer strake, inner edge", x -> stretch(x, 0.8), x -> stretch(x, 0.16))
            .named(LineKind.STRAKE_OUTER, "Outer strake, outer edge", x -> stretch(x, 0.87), x -> stretch(x, 0.16));
    }

    @Test
    void exact_edgesPassThroughThePointsOfTheTable() {
        OffsetTable table = striped().table();
        assertEquals(List.of(), TableFaults.of(table));
        Hull hull = Hull.faired(table);
        List<LaidFeature> laid = BottomFeatures.on(hull, Optional.empty()).with(table, hull).laid();
        assertEquals(List.of("Inner strake", "Outer strake"), laid.stream().map(LaidFeature::name).toList());
        List<Quad> cover = laid.get(0).cover();
        assertEquals(1, cover.get(0).x(0), 0);
        assertEquals(4, cover.get(cover.size() - 1).x(1), 0);
        int met = 0;
        for (Quad quad : cover) {
            if (Math.rint(quad.x(0)) == quad.x(0)) {
                assertEquals(inner(quad.x(0)), quad.y(0), 1e-12, "inner edge at " + quad.x(0));
                assertEquals(inner(quad.x(0)) + 0.06, quad.y(3), 1e-12, "outer edge at " + quad.x(0));
                met++;
            }
        }
        assertEquals(3, met);
        // the skin rises 1 in 5 over the breadth of a level ledge
        assertEquals(0.06 / 5, laid.get(0).height().orElseThrow(), 1e-4);
        assertEquals(0.07 / 5, laid.get(1).height().orElseThrow(), 1e-4);
    }

    /** Strakes are no lines of the skin: with them and without it is the same surface, their ends put no ripple into it. */
    @Test
    void law_skinIsDrawnAsIfTheyWereNotThere() {
        Hull with = Hull.faired(striped().table());
        Hull without = Hull.faired(bare().table());
        for (double x = 0; x <= 6; x += 0.3) {
            for (double y = 0; y <= 1.1; y += 0.1) {
                assertEquals(without.height(x, y), with.height(x, y), 0);
            }
        }
    }

    @Test
    void badInput_rowsOfStrakes() {
        List<String> reasons = new ArrayList<>();
        OffsetTable table = bare()
            .named(LineKind.STRAKE_INNER, "Strake inner", x -> stretch(x, 0.5), x -> x == 2 ? Double.NaN : stretch(x, 0.1))
            .named(LineKind.STRAKE_OUTER, "Strake outer", x -> stretch(x, x == 3 ? 0.4 : 0.6), x -> stretch(x, 0.1))
            .row(LineKind.STRAKE_INNER, "Spray strake inner", Measure.HEIGHT, x -> 0.2)
            .buttock(0.55, (x, y) -> x == 2 ? 0.11 : Double.NaN).table();
        for (TableFault fault : TableFaults.of(table)) {
            reasons.add(fault.reason());
        }
        assertTrue(reasons.containsAll(List.of(
            "blank; Strake runs from station 1 to station 4, fill its four rows there and nowhere else",
            "half-breadth 400 mm is not outboard of the inner edge's 500 mm",
            "lies between the edges of Strake (500 mm and 600 mm): it reads the strake and not the skin; leave the cell blank",
            "Spray strake lacks a row; add its outer edge to the heights")), reasons.toString());
    }
}
