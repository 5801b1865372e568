package org.garboard.geometry;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class GaussRuleTest {

    /** Abramowitz and Stegun, table 25.4, four points on [-1, 1]. */
    @Test
    void published_fourPoints() {
        GaussRule rule = GaussRule.of(4);
        assertEquals(0.861136311594053, 2 * rule.at(3) - 1, 1e-15);
        assertEquals(0.339981043584856, 2 * rule.at(2) - 1, 1e-15);
        assertEquals(0.347854845137454, 2 * rule.weight(3), 1e-15);
        assertEquals(0.652145154862546, 2 * rule.weight(1), 1e-15);
    }

    @Test
    void exact_powersUpToTwiceThePoints() {
        for (int points = 1; points <= 16; points++) {
            GaussRule rule = GaussRule.of(points);
            for (int power = 0; power < 2 * points; power++) {
                double sum = 0;
                for (int i = 0; i < rule.size(); i++) {
                    sum += rule.weight(i) * Math.pow(rule.at(i), power);
                }
                assertEquals(1.0 / (power + 1), sum, 1e-14, points + " points, power " + power);
            }
        }
    }

    @Test
    void badInput_noPoints() {
        assertThrows(IllegalArgumentException.class, () -> GaussRule.of(0));
    }

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
        assertArrayEquals(new double[] {0.5, 0.75}, new HermiteCubic(1, -1, 1, 1).least(), 1e-12);
        assertArrayEquals(new double[] {0, -1}, new HermiteCubic(-1, 1, 2, 1).least(), 1e-12);
    }
}
