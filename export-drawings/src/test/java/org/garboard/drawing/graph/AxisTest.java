package org.garboard.drawing.graph;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class AxisTest {
    @Test
    void exact_roundFigures() {
        assertEquals(List.of("-2", "0", "2", "4", "6", "8"), Axis.over(-1.3, 6.3).figures().toList());
        assertEquals(List.of("0", "5", "10", "15", "20", "25", "30"), Axis.over(0, 28).figures().toList());
        assertEquals(List.of("0.0", "2.5", "5.0", "7.5", "10.0"), Axis.over(0, 10).figures().toList());
        assertEquals(0.5, Axis.over(-1.3, 6.3).share(3), 1e-12);
    }

    /** From a tenth of a millimetre to a kilometre: nothing lies outside, and there are two to ten steps. */
    @Test
    void law_holdsItsRange() {
        for (double most = 1e-4; most < 1000; most *= 1.07) {
            for (double least : new double[] {0, -0.01 * most, -most, -7 * most}) {
                Axis axis = Axis.over(least, most);
                assertTrue(axis.share(least) > -1e-9 && axis.share(most) < 1 + 1e-9, least + " to " + most);
                assertTrue(axis.steps() >= 2 && axis.steps() <= 11, least + " to " + most + ": " + axis.steps());
                assertEquals(axis.steps() + 1, axis.figures().distinct().count());
            }
        }
    }
}
