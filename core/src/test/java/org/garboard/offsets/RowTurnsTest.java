package org.garboard.offsets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import org.garboard.offsets.RowTurns.Turn;
import org.junit.jupiter.api.Test;

class RowTurnsTest {
    private static final double MILLIMETRE = 1e-3;

    private static List<RowTurns> turns(DoubleUnaryOperator keel, double... stations) {
        List<Entry> entries = IntStream.range(0, stations.length)
            .mapToObj(i -> new Entry(i, keel.applyAsDouble(stations[i]))).toList();
        return RowTurns.of(new OffsetTable("boat", SkinSurface.OUTSIDE_OF_SKIN, MILLIMETRE,
            IntStream.range(0, stations.length).mapToObj(i -> new Station("" + i, stations[i])).toList(),
            List.of(new TableLine(LineKind.KEEL, "Keel", 0, Measure.HEIGHT, entries))));
    }

    @Test
    void exact_parabolaNeverTurns() {
        assertEquals(List.of(), turns(x -> 0.2 * x * x, 0, 1, 2.5, 3, 4));
    }

    /** (x - 2)^3 has its bend's change of sign at station 2, where the second difference is none. */
    @Test
    void exact_cubicTurnsOnce() {
        List<RowTurns> found = turns(x -> 0.1 * Math.pow(x - 2, 3), 0, 1, 2, 3, 4);
        assertEquals(List.of(new Turn(1, 3)), found.get(0).turns());
    }

    /**
     * One reading of a straight row off by q bends it by q, -2q, q over the square of the spacing, and rounding
     * explains 2 least counts: so 0.9 mm says nothing, and 2.1 mm turns it twice.
     */
    @Test
    void exact_roundingIsNoTurn() {
        DoubleUnaryOperator bump = x -> x == 3 ? 1 : 0;
        assertEquals(List.of(), turns(x -> 0.9 * MILLIMETRE * bump.applyAsDouble(x), 0, 1, 2, 3, 4, 5, 6));
        List<RowTurns> found = turns(x -> 2.1 * MILLIMETRE * bump.applyAsDouble(x), 0, 1, 2, 3, 4, 5, 6);
        assertEquals(List.of(new Turn(2, 3), new Turn(3, 4)), found.get(0).turns());
    }
}
