package org.garboard.geometry;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class HermiteCubicTest {

    /** 3 (s - 0.2)(s - 0.5)(s - 0.9), and one that stays above zero. */
    @Test
    void exact_partingsOfACubic() {
        double c0 = -3 * 0.2 * 0.5 * 0.9;
        double c1 = 3 * (0.2 * 0.5 + 0.2 * 0.9 + 0.5 * 0.9);
        double c2 = -3 * (0.2 + 0.5 + 0.9);
        HermiteCubic cubic = new HermiteCubic(c0, c1, c0 + c1 + c2 + 3, c1 + 2 * c2 + 9);
        assertArrayEquals(new double[] {0.2, 0.5, 0.9, 1}, cubic.partings(), 1e-12);
        assertEquals(3 * 0.1 * -0.2 * -0.6, cubic.value(0.3), 1e-14);
        assertArrayEquals(new double[] {1}, new HermiteCubic(1, -1, 1, 1).partings());
        assertArrayEquals(new double[] {0.5, 0.75}, new HermiteCubic(1, -1, 1, 1).least(1e-12), 1e-12);
        assertArrayEquals(new double[] {0, -1}, new HermiteCubic(-1, 1, 2, 1).least(1e-12), 1e-12);
    }
}
