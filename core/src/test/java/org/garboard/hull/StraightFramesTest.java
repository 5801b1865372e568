package org.garboard.hull;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.garboard.offsets.LineKind;
import org.junit.jupiter.api.Test;

/** A hard-chine boat whose table gives its named lines alone: frames are straight between them. */
class StraightFramesTest {
    private static final double LENGTH = 11.9;

    private static double ahead(double x, double end, double power) {
        return x < end ? Math.pow((end - x) / end, power) : 0;
    }

    private static double chineY(double x) {
        return 0.06 + 1.37 * (1 - ahead(x, 7, 2.4));
    }

    private static double chineZ(double x) {
        return 1.45 * ahead(x, 6.4, 3.6) + chineY(x) * Math.tan(Math.toRadians(22 + 26 * ahead(x, 8.2, 2.8)));
    }

    private static Hull hull() {
        return Hull.through(new Forms(0, Forms.even(0, LENGTH, 13)).keel(x -> 1.45 * ahead(x, 6.4, 3.6))
            .named(LineKind.CHINE, "Chine", StraightFramesTest::chineY, StraightFramesTest::chineZ)
            .named(LineKind.SHEER, "Sheer", x -> chineY(x) + 0.2, x -> 2.6).table());
    }

    /** Between the stations too: the skin lies on the straight from keel line to chine line. */
    @Test
    void exact_everyFrameIsStraight() {
        Hull hull = hull();
        HullLine chine = hull.bottomEdge();
        for (double x = 0; x <= LENGTH; x += 0.137) {
            for (double part = 0.1; part < 1; part += 0.1) {
                double straight = hull.keel().z(x) + part * (chine.z(x) - hull.keel().z(x));
                assertEquals(straight, hull.height(x, part * chine.y(x)), 1e-9, "x " + x + ", part " + part);
            }
        }
    }

    @Test
    void law_aRowOfHeightsIsTheHeightsOneByOne() {
        Hull hull = hull();
        double[] row = new double[203];
        for (double x = -0.2; x <= LENGTH + 0.3; x += 0.211) {
            hull.heights(x, 0.01, row, 3, 200);
            double[] single = new double[203];
            for (int i = 0; i < 200; i++) {
                single[3 + i] = hull.height(x, i * 0.01);
            }
            assertArrayEquals(single, row, 1e-12, "x " + x);
        }
    }
}
