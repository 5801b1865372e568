package org.garboard.inside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.craft.Sides;
import org.garboard.handling.Support;
import org.garboard.handling.Supports;
import org.garboard.hull.Hull;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;
import org.junit.jupiter.api.Test;

/** A wedge 6 m long, transom at x = 6 and 50 mm thick: what lies 1 m ahead of its inside is at x = 4.95. */
class LaidInsideTest {
    private static final Hull HULL = wedge();
    private static final List<InsideDatum> DATA = List.of(new InsideDatum.Transom("transom", 0.05), new InsideDatum.TransferPoint("drain", 0.4));
    private static final Seen ALL = new Seen("transom", new Span(0, 4));
    private static final Span ON_SKIN = new Span(0, 0.2);

    @Test
    void exact_lengthsFromTheInsideOfTheTransomAndFromADrain() {
        assertEquals(5.95, DATA.get(0).x(HULL), 1e-12);
        assertEquals(5.6, DATA.get(1).x(HULL), 1e-12);
        Room byTransom = new Room(Room.Kind.BULKHEAD, "aft", "transom", Sides.BOTH, new Span(1, 1.02), new Span(0, 1), ON_SKIN);
        Room byDrain = new Room(Room.Kind.BULKHEAD, "aft", "drain", Sides.BOTH, new Span(0.65, 0.67), new Span(0, 1), ON_SKIN);
        // block 0.1 m long in the middle of x = 5.1: 0.05 m to its end, the bulkhead's after face at x = 4.95
        assertEquals(100, gap(byTransom, 5.1, 0.3), 1e-9);
        assertEquals(100, gap(byDrain, 5.1, 0.3), 1e-9);
    }

    @Test
    void exact_pairsStandOnBothSidesAndSinglesOnOne() {
        Room pair = new Room(Room.Kind.STRINGER, "stringers", "transom", Sides.BOTH, new Span(0, 4), new Span(0.5, 0.55), ON_SKIN);
        assertEquals(150, gap(pair, 4, 0.3), 1e-9);
        assertEquals(150, gap(pair, 4, -0.3), 1e-9);
        Room port = new Room(Room.Kind.STRINGER, "stringer", "transom", Sides.PORT, new Span(0, 4), new Span(0.5, 0.55), ON_SKIN);
        assertEquals(150, gap(port, 4, -0.3), 1e-9);
        assertEquals(750, gap(port, 4, 0.3), 1e-9);
        Room across = new Room(Room.Kind.FLOOR, "floor", "transom", Sides.BOTH, new Span(0, 4), new Span(0, 0.1), ON_SKIN);
        assertEquals(0, gap(across, 4, 0), 1e-9);
    }

    @Test
    void exact_whatHangsHighIsNoNeighbourButHeadroom() {
        Room engine = new Room(Room.Kind.ENGINE, "engine", "transom", Sides.BOTH, new Span(1, 3), new Span(0, 0.4), new Span(0.25, 1));
        LaidInside inside = laid(engine);
        assertEquals(Double.POSITIVE_INFINITY, inside.besideGap(4, 0.3, 0.1, 0.1, 0.2));
        assertEquals(0, inside.besideGap(4, 0.3, 0.1, 0.1, 0.3));
        assertEquals(0.25, inside.headroom(4, 0.3, 0.1, 0.1), 1e-12);
        assertEquals("engine (engine, measured from transom)", inside.over(4, 0.3, 0.1, 0.1));
        assertEquals("", inside.over(1, 0.3, 0.1, 0.1));
    }

    @Test
    void exact_fuelHoweverHigh() {
        LaidInside inside = laid(new Room(Room.Kind.FUEL_TANK, "main", "transom", Sides.BOTH, new Span(1, 3), new Span(0, 0.4), new Span(0.5, 1)));
        assertEquals(0, inside.fuelGap(4, 0.3, 0.1, 0.1));
        assertEquals(0.09, inside.fuelGap(4, 0.54, 0.1, 0.1), 1e-12);
        assertEquals("fuel tank (main, measured from transom)", inside.nearest(4, 0.54, 0.1, 0.1));
    }

    /** A limber hole is a passage: it stands in nobody's way, but a block keeps off it. */
    @Test
    void exact_limberHoles() {
        LaidInside inside = laid(new Room(Room.Kind.LIMBER_HOLE, "hole", "transom", Sides.STARBOARD, new Span(1, 1.04), new Span(0.1, 0.14), ON_SKIN));
        assertEquals(Math.hypot(0.06, 0.11), inside.limberGap(4.8, 0.3, 0.1, 0.1), 1e-12);
        assertEquals(Double.POSITIVE_INFINITY, inside.besideGap(4.8, 0.3, 0.1, 0.1, 0.2));
        assertEquals(Double.POSITIVE_INFINITY, inside.headroom(4.93, 0.12, 0.1, 0.1));
    }

    @Test
    void law_wasLookedAt() {
        LaidInside inside = LaidInside.on(HULL, new Inside(DATA, List.of(), List.of(new Seen("transom", new Span(0, 1)))));
        assertTrue(inside.lookedAt(5.5, 0.1));
        assertFalse(inside.lookedAt(4.99, 0.1));
    }

    @Test
    void roomsOutsideTheHullAreNamed() {
        Room lost = new Room(Room.Kind.TANK, "lost", "transom", Sides.BOTH, new Span(7, 8), new Span(0, 0.4), ON_SKIN);
        Room good = new Room(Room.Kind.TANK, "good", "transom", Sides.BOTH, new Span(2, 3), new Span(0, 0.4), ON_SKIN);
        assertEquals(List.of(lost), LaidInside.on(HULL, new Inside(DATA, List.of(lost, good), List.of(ALL))).beyond(HULL));
    }

    @Test
    void refusesRoomsMeasuredFromNowhere() {
        Room room = new Room(Room.Kind.TANK, "water", "mast", Sides.BOTH, new Span(1, 2), new Span(0, 0.4), ON_SKIN);
        assertEquals("water was measured from mast, which is not told",
            assertThrows(IllegalArgumentException.class, () -> new Inside(DATA, List.of(room), List.of())).getMessage());
        assertThrows(IllegalArgumentException.class, () -> new InsideDatum.Transom("t", 0));
    }

    @Test
    void exact_bunksAndSlings() {
        Support bunks = new Support(Support.Kind.BUNK, "bunks", Sides.BOTH, 0, 3, Optional.of(new Support.Out(0.5, 0.6)));
        Support sling = new Support(Support.Kind.SLING, "aft sling", Sides.BOTH, 1.5, 1.7, Optional.empty());
        Supports all = new Supports(List.of(bunks, sling));
        assertEquals(0.15, all.gap(0.8, -0.3, 0.1, 0.1), 1e-12);
        assertEquals(0, all.gap(0.8, 0.5, 0.1, 0.1));
        assertEquals("trailer bunk (bunks)", all.nearest(0.8, 0.5, 0.1, 0.1));
        assertEquals("sling (aft sling)", all.nearest(1.6, 0.1, 0.1, 0.1));
        assertEquals(Math.hypot(0.45, 0.15), new Supports(List.of(bunks)).gap(3.5, 0.3, 0.1, 0.1), 1e-9);
        assertEquals(Double.POSITIVE_INFINITY, new Supports(List.of()).gap(1, 0, 0.1, 0.1));
    }

    private static double gap(Room room, double x, double y) {
        return 1000 * laid(room).besideGap(x, y, 0.1, 0.1, 0.2);
    }

    private static LaidInside laid(Room room) {
        return LaidInside.on(HULL, new Inside(DATA, List.of(room), List.of(ALL)));
    }

    private static Hull wedge() {
        List<TableLine> lines = new ArrayList<>();
        lines.add(row(LineKind.KEEL, "Keel", Measure.HEIGHT, 0));
        lines.add(row(LineKind.CHINE, "Chine", Measure.HALF_BREADTH, 1));
        lines.add(row(LineKind.CHINE, "Chine", Measure.HEIGHT, 0.3));
        lines.add(row(LineKind.SHEER, "Sheer", Measure.HALF_BREADTH, 1.2));
        lines.add(row(LineKind.SHEER, "Sheer", Measure.HEIGHT, 1.2));
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            stations.add(new Station(String.valueOf(i), 2 * i));
        }
        return Hull.through(new OffsetTable("closed form", SkinSurface.OUTSIDE_OF_SKIN, 0.001, stations, lines));
    }

    private static TableLine row(LineKind kind, String name, Measure measure, double value) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            entries.add(new Entry(i, value));
        }
        return new TableLine(kind, name, 0, measure, entries);
    }
}
