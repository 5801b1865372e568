package org.garboard.craft;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import org.garboard.hull.Hull;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;
import org.junit.jupiter.api.Test;

/** A bottom that rises 0.3 in 1 out, and a strake on it, or not. */
class StrakeOffSkinTest {
    private final List<TableLine> lines = new ArrayList<>();

    private void row(LineKind kind, String name, Measure measure, double... values) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            entries.add(new Entry(i, values[i]));
        }
        lines.add(new TableLine(kind, name, 0, measure, entries));
    }

    private List<StrakeOffSkin> looked(double... innerHeights) {
        row(LineKind.KEEL, "Keel", Measure.HEIGHT, 0, 0, 0);
        row(LineKind.SHEER, "Sheer", Measure.HEIGHT, 0.3, 0.3, 0.3);
        row(LineKind.SHEER, "Sheer", Measure.HALF_BREADTH, 1, 1, 1);
        row(LineKind.STRAKE_INNER, "Strake, inner", Measure.HEIGHT, innerHeights);
        row(LineKind.STRAKE_INNER, "Strake, inner", Measure.HALF_BREADTH, 0.4, 0.4, 0.4);
        row(LineKind.STRAKE_OUTER, "Strake, outer", Measure.HEIGHT, 0.12, 0.12, 0.12);
        row(LineKind.STRAKE_OUTER, "Strake, outer", Measure.HALF_BREADTH, 0.48, 0.48, 0.48);
        OffsetTable table = new OffsetTable("closed form", SkinSurface.OUTSIDE_OF_SKIN, 0.001,
            List.of(new Station("0", 0), new Station("1", 1), new Station("2", 2)), lines);
        return StrakeOffSkin.of(table, Hull.through(table));
    }

    @Test
    void exact_anEdgeOnTheSkinIsNotTold() {
        assertEquals(List.of(), looked(0.12, 0.124, 0.12));
    }

    @Test
    void exact_anEdgeOffTheSkinIsToldWithPlaceAndSize() {
        List<StrakeOffSkin> found = looked(0.12, 0.15, 0.12);
        assertEquals(1, found.size());
        assertEquals(0.03, found.get(0).off(), 1e-9);
        assertEquals("Strake: its inner edge at x = 1.000 m lies 30.0 mm above the skin as drawn; compare its cells with the bottom beside it.",
            found.get(0).words());
    }
}
