package org.garboard.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class LineTraceTest {

    /** A straight chine that closes in and rises: distance by the cross product. */
    @Test
    void exact_distanceFromAStraightLine() {
        LineTrace line = new LineTrace(x -> 1 - 0.2 * x, x -> 0.3 + 0.1 * x, 0, 4);
        double[] d = {1, -0.2, 0.1};
        double[] p = {2.013 - 2, 0.25 - 0.6, 0.1 - 0.5};
        double cx = p[1] * d[2] - p[2] * d[1];
        double cy = p[2] * d[0] - p[0] * d[2];
        double cz = p[0] * d[1] - p[1] * d[0];
        double expected = Math.sqrt((cx * cx + cy * cy + cz * cz) / (1 + 0.04 + 0.01));
        assertEquals(expected, line.distance(2.013, 0.25, 0.1), 1e-12);
        assertEquals(1 - 0.2 * 1.2345, line.y(1.2345), 1e-12);
    }

    /** An arc of 1 m radius in plan: a chord c long, 10 mm in x, falls short of it by c2 / 8. */
    @Test
    void exact_distanceFromACircle() {
        LineTrace line = new LineTrace(x -> Math.sqrt(1 - Math.min(1, x * x)), x -> 0, 0, 0.9);
        for (double angle = 0.5; angle < 1.5; angle += 0.1) {
            double chord = 0.010 / Math.sin(angle) * 1.05;
            double sagitta = chord * chord / 8;
            double x = 0.7 * Math.cos(angle);
            double y = 0.7 * Math.sin(angle);
            assertEquals(0.3, line.distance(x, y, 0), sagitta, "inside at " + angle);
            if (1.3 * Math.cos(angle) < 0.9) {
                assertEquals(0.3, line.distance(1.3 * Math.cos(angle), 1.3 * Math.sin(angle), 0), sagitta);
            }
        }
    }

    /** Beyond an end the end itself is nearest. */
    @Test
    void exact_distanceFromAnEnd() {
        LineTrace line = new LineTrace(x -> 1, x -> 0, 0, 4);
        assertEquals(5, line.distance(7, 5, 0), 1e-12);
        assertEquals(5, line.distance(-3, 1, 4), 1e-12);
        assertTrue(Double.isNaN(line.y(4.1)) && Double.isNaN(line.y(-0.1)));
    }

    /** Second opinion: the least of many distances, on a line that curves as chines do forward. */
    @Test
    void law_noPlaceOfTheLineIsNearer() {
        LineTrace line = new LineTrace(x -> 1.4 * Math.sqrt(x / 6), x -> 0.8 - 0.1 * x, 0.2, 6);
        for (double px = 0.3; px < 6; px += 0.31) {
            for (double py = 0.1; py < 1.6; py += 0.17) {
                double found = line.distance(px, py, 0.2);
                double least = Double.POSITIVE_INFINITY;
                for (double x = 0.2; x <= 6; x += 0.0005) {
                    least = Math.min(least, Math.hypot(px - x,
                        Math.hypot(py - 1.4 * Math.sqrt(x / 6), 0.2 - 0.8 + 0.1 * x)));
                }
                assertEquals(least, found, 1e-4, px + ", " + py);
            }
        }
    }
}
