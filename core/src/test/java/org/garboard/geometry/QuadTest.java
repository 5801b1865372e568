package org.garboard.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import org.junit.jupiter.api.Test;

class QuadTest {
    private static final double[] SQUARE = {0, 0, 1, 0, 1, 1, 0, 1};

    @Test
    void exact_gaps() {
        Quad square = Quad.of(SQUARE);
        assertEquals(1, square.gap(new double[] {2, 0.2, 3, 0.2, 3, 0.8, 2, 0.8}), 1e-15);
        assertEquals(5, square.gap(new double[] {4, 5, 6, 5, 6, 7, 4, 7}), 1e-15);
        assertEquals(Math.sqrt(0.5), square.gap(new double[] {2, 1, 3, 2, 2, 3, 1, 2}), 1e-15);
        assertEquals(0, square.gap(new double[] {0.4, -1, 0.6, -1, 0.6, 2, 0.4, 2}), 0, "a cross has no corner inside");
        assertEquals(0, square.gap(new double[] {-1, -1, 2, -1, 2, 2, -1, 2}), 0, "one within the other");
        assertEquals(0.25, square.gap(new double[] {1.25, -1, 1.25, 2, 1.25, 2, 1.25, -1}), 1e-15, "as narrow as a line");
    }

    /** The other way round, wound the other way, and never less than between the boxes. */
    @Test
    void law_gapIsTheSameFromBothSides() {
        Random random = new Random(7);
        for (int i = 0; i < 2000; i++) {
            double[] one = turned(random);
            double[] other = turned(random);
            double gap = Quad.of(one).gap(other);
            assertEquals(gap, Quad.of(other).gap(one), 1e-12);
            double[] back = {other[6], other[7], other[4], other[5], other[2], other[3], other[0], other[1]};
            assertEquals(gap, Quad.of(one).gap(back), 1e-12);
            assertTrue(Quad.of(one).leastGap(other) <= gap + 1e-12);
        }
    }

    private static double[] turned(Random random) {
        double x = 4 * random.nextDouble();
        double y = 4 * random.nextDouble();
        double turn = 7 * random.nextDouble();
        double a = random.nextDouble();
        double b = random.nextDouble();
        double[] corners = new double[8];
        for (int i = 0; i < 4; i++) {
            double u = i == 0 || i == 3 ? -a : a;
            double v = i < 2 ? -b : b;
            corners[2 * i] = x + u * Math.cos(turn) - v * Math.sin(turn);
            corners[2 * i + 1] = y + u * Math.sin(turn) + v * Math.cos(turn);
        }
        return corners;
    }
}
