package org.garboard.drawing.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.garboard.job.DrawingWish.Units;
import org.junit.jupiter.api.Test;

class FiguresTest {

    private static final Figures MM = new Figures(Units.MILLIMETRES);
    private static final Figures FEET = new Figures(Units.FEET_INCHES_EIGHTHS);

    /** 22'-0" less 19'-2 3/4" is 2'-9 1/4", 33.25 x 25.4 = 844.55 mm. */
    @Test
    void exact_tapedLengths() {
        double metres = (22 * 12 - (19 * 12 + 2.75)) * 0.0254;
        assertEquals("845", MM.length(metres));
        assertEquals("845 (2'-9 1/4\")", FEET.length(metres));
        assertEquals("845 ±4", MM.length(metres, Marking.place(metres)));
        assertEquals("845 ±4 (2'-9 1/4\" ±1/8\")", FEET.length(metres, Marking.place(metres)));
    }

    /** On the bench an eighth would be 1.45 mm off at 43 mm, more than the depth's tolerance. */
    @Test
    void exact_benchFigures() {
        assertEquals("40.5 (0'-1 5/8\")", FEET.fine(0.0405));
        assertEquals("43 (0'-1 11/16\")", FEET.fine(0.043));
        assertEquals("372 (1'-2 5/8\")", FEET.bench(0.37213));
        assertEquals("372", MM.bench(0.37213));
        assertEquals("±1 (±1/32\")", FEET.within(Marking.DEPTH));
        assertEquals("±13", MM.within(Marking.place(10.49)));
    }
}
