package org.garboard.inside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.garboard.craft.Sides;
import org.garboard.finding.Figure;
import org.garboard.finding.Finding;
import org.garboard.finding.Finding.Answer;
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
        List<Finding> findings = findings(4, 0.3, 0.2, engine);
        assertEquals(Double.POSITIVE_INFINITY, ((Figure) findings.get(1)).value());
        assertEquals(250, ((Figure) findings.get(2)).value(), 1e-9);
        assertEquals(Answer.YES, findings.get(2).answer());
        List<Finding> higher = findings(4, 0.3, 0.3, engine);
        assertEquals(Answer.NO, higher.get(2).answer());
        assertEquals("Too little room under engine to draw the transducer and fit its blank.", higher.get(2).sentence());
        assertEquals(Answer.NO, higher.get(1).answer());
    }

    @Test
    void fuelBehindTheSkinIsARefusalHoweverHigh() {
        Room tank = new Room(Room.Kind.FUEL_TANK, "main", "transom", Sides.BOTH, new Span(1, 3), new Span(0, 0.4), new Span(0.5, 1));
        assertEquals(Answer.NO, findings(4, 0.3, 0.2, tank).get(0).answer());
        assertEquals("A fuel tank (main) lies behind the skin.", findings(4, 0.3, 0.2, tank).get(0).sentence());
        assertEquals(Answer.NO, findings(4, 0.54, 0.2, tank).get(0).answer());
        assertEquals(Answer.YES, findings(4, 0.56, 0.2, tank).get(0).answer());
        List<Finding> unseen = LaidInside.on(HULL, new Inside(DATA, List.of(tank), List.of())).at(4, 0.3, 0.1, 0.1, 0.2);
        assertEquals(List.of(Answer.NO, Answer.NOT_KNOWN, Answer.NOT_KNOWN), unseen.stream().map(Finding::answer).toList());
    }

    @Test
    void whereNobodyLookedNothingIsKnown() {
        LaidInside inside = LaidInside.on(HULL, new Inside(DATA, List.of(), List.of(new Seen("transom", new Span(0, 1)))));
        assertEquals(List.of(Answer.YES, Answer.YES, Answer.YES), inside.at(5.5, 0.3, 0.1, 0.1, 0.2).stream().map(Finding::answer).toList());
        List<Answer> none = List.of(Answer.NOT_KNOWN, Answer.NOT_KNOWN, Answer.NOT_KNOWN);
        assertEquals(none, inside.at(4.99, 0.3, 0.1, 0.1, 0.2).stream().map(Finding::answer).toList());
        assertEquals(none, LaidInside.untold().stream().map(Finding::answer).toList());
    }

    @Test
    void roomsOutsideTheHullAreNamed() {
        Room lost = new Room(Room.Kind.TANK, "lost", "transom", Sides.BOTH, new Span(7, 8), new Span(0, 0.4), ON_SKIN);
        Room good = new Room(Room.Kind.TANK, "good", "transom", Sides.BOTH, new Span(2, 3), new Span(0, 0.4), ON_SKIN);
        assertEquals(List.of("lost"), LaidInside.on(HULL, new Inside(DATA, List.of(lost, good), List.of(ALL))).beyond(HULL));
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
        Optional<Supports> all = Optional.of(new Supports(List.of(bunks, sling)));
        Figure figure = (Figure) Supports.at(HULL, all, 5.2, -0.3, 0.1, 0.1);
        assertEquals(150, figure.value(), 1e-9);
        assertEquals(Answer.YES, figure.answer());
        Figure under = (Figure) Supports.at(HULL, all, 5.2, 0.5, 0.1, 0.1);
        assertEquals("A trailer bunk (bunks) bears on the place.", under.sentence());
        assertEquals("A sling (aft sling) bears on the place.", Supports.at(HULL, all, 4.4, 0.1, 0.1, 0.1).sentence());
        assertEquals(Math.hypot(450, 150), ((Figure) Supports.at(HULL, Optional.of(new Supports(List.of(bunks))), 2.5, 0.3, 0.1, 0.1)).value(), 1e-6);
        assertEquals(Answer.NOT_KNOWN, Supports.at(HULL, Optional.empty(), 5, 0, 0.1, 0.1).answer());
        assertTrue(Double.isInfinite(((Figure) Supports.at(HULL, Optional.of(new Supports(List.of())), 5, 0, 0.1, 0.1)).value()));
    }

    private static double gap(Room room, double x, double y) {
        return ((Figure) findings(x, y, 0.2, room).get(1)).value();
    }

    private static List<Finding> findings(double x, double y, double headroom, Room room) {
        return LaidInside.on(HULL, new Inside(DATA, List.of(room), List.of(ALL))).at(x, y, 0.1, 0.1, headroom);
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
