package org.garboard.geometry;

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
}
