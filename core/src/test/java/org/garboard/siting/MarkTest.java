package org.garboard.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class MarkTest {

    @Test
    void exact_steps() {
        assertEquals(0.005, Mark.FIVE_MILLIMETRES.step());
        assertEquals(0.00635, Mark.QUARTER_INCH.step());
        assertEquals(1.235, Mark.FIVE_MILLIMETRES.round(1.2326));
        assertEquals(4.80695, Mark.QUARTER_INCH.round(4.8060));
    }

    /** A place forward of the origin is rounded as one abaft of it. */
    @Test
    void law_signs() {
        for (double length : new double[] {0, 0.0024, 0.0025, 0.0026, 0.0075, 3.1326}) {
            for (Mark mark : Mark.values()) {
                assertEquals(mark.round(length), -mark.round(-length), 0);
            }
        }
    }
}
