package org.garboard.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class StraightFitTest {

    @Test
    void exact_straight() {
        StraightFit fit = StraightFit.over(x -> 2 - 0.3 * x, 5, 1.5, 21);
        assertEquals(-0.3, fit.slope(), 1e-12);
        assertEquals(0.5, fit.z(), 1e-12);
        assertEquals(2 - 0.3 * 7, fit.z(7), 1e-12);
        assertEquals(0, fit.gap(), 1e-12);
    }

    /** c x2 over x0 +- h: the best straight has the slope 2 c x0, the curve leaves it by c h2, square to it. */
    @Test
    void exact_parabola() {
        double c = 0.02;
        StraightFit fit = StraightFit.over(x -> c * x * x, 5, 1.5, 21);
        assertEquals(2 * c * 5, fit.slope(), 1e-12);
        assertEquals(c * 1.5 * 1.5 * Math.cos(Math.atan(0.2)), fit.gap(), 1e-12);
    }

    @Test
    void law_whatIsNotThereIsNotANumber() {
        assertTrue(Double.isNaN(StraightFit.over(x -> x > 6 ? Double.NaN : 0, 5, 1.5, 9).gap()));
    }
}
