package org.garboard.hull;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.OffsetTable;
import org.junit.jupiter.api.Test;

class FitTest {

    private static OffsetTable table(int stations, int buttocks) {
        Forms forms = new Forms(1e-3, Forms.even(0, 10, stations)).keel(x -> 0)
                .named(LineKind.CHINE, "Chine", x -> 1.5, x -> 0.6)
                .named(LineKind.SHEER, "Sheer", x -> 1.7, x -> 1.5);
        for (int i = 1; i <= buttocks; i++) {
            forms.buttock(1.5 * i / (buttocks + 1), (x, y) -> 0.4 * y);
        }
        return forms.table();
    }

    @Test
    void drawsWhatAnyLoftHas() {
        assertEquals(Optional.empty(), Fit.WITHIN_ROUNDING.obstacle(table(60, 20)));
        assertEquals(Optional.empty(), Fit.EXACT.obstacle(table(500, 30)));
    }

    @Test
    void badInput_tooManyPoints() {
        assertEquals("500 stations with up to 52 points from Keel to Chine are more than can be drawn within rounding; "
                + "with that many stations 23 points work: leave out every other station, or waterlines and buttocks, "
                + "or ask for exact", Fit.WITHIN_ROUNDING.obstacle(table(500, 50)).orElseThrow());
        String exact = Fit.EXACT.obstacle(table(500, 100)).orElseThrow();
        assertTrue(exact.startsWith("500 stations with up to 102 points from Keel to Chine are more than can be drawn "
                + "through every value"), exact);
    }
}
