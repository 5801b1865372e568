package org.garboard.flow.doublebody;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;

class BadWishTest {

    private static String message(Executable call) {
        return assertThrows(IllegalArgumentException.class, call).getMessage();
    }

    @Test
    void aSpeedOfNothing() {
        assertEquals("a speed of 0.0 m/s: it must be more than 0 and at most 100 m/s", message(() -> new Froude(0, 10)));
        assertEquals("a speed of -2.0 m/s: it must be more than 0 and at most 100 m/s", message(() -> new Froude(-2, 10)));
        assertEquals("a speed of NaN m/s: it must be more than 0 and at most 100 m/s", message(() -> new Froude(Double.NaN, 10)));
        assertEquals("a waterline of 0.0 m: it must be longer than 0", message(() -> new Froude(2, 0)));
    }

    @Test
    void exact_froudeNumber() {
        assertEquals(0.3, new Froude(0.3 * Math.sqrt(98.0665), 10).number(), 1e-12);
        assertTrue(new Froude(2.9, 10).levelWater());
        assertFalse(new Froude(3.1, 10).levelWater());
    }

    @Test
    void meshesTooCoarseOrTooFine() {
        assertEquals("a mesh of 4 columns and 2 rows: at least 8 and 4, and at most 5000 panels with 13 columns for the ends",
            message(() -> new MeshWish(4, 2, Stern.CLOSED)));
        assertEquals("a mesh of 200 columns and 30 rows: at least 8 and 4, and at most 5000 panels with 13 columns for the ends",
            message(() -> new MeshWish(200, 30, Stern.CLOSED)));
        assertEquals("a mesh of 6000 panels: from 150 to 5000 can be made", message(() -> MeshWish.atMost(6000, Stern.CLOSED)));
    }

    @Test
    void law_aMeshOfAtMostSoManyPanels() {
        for (int panels = 150; panels <= 5000; panels += 50) {
            MeshWish wish = MeshWish.atMost(panels, Stern.STRAIGHT_RUN);
            int made = (wish.columns() + 13) * wish.rows();
            assertTrue(made <= panels && made > 0.9 * panels, panels + " asked, " + made + " made");
        }
    }
}
