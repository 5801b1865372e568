package org.garboard.hull;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.OffsetTable;
import org.junit.jupiter.api.Test;

/**
 * Wigley's parabolic hull, half-breadth (B/2)(1 - (2x/L)^2)(1 - (z/T)^2), and Journee's modified
 * form I (J.M.J. Journee, DUT-SHL Report 0909, 1992), from 21 stations and 9 or 25 waterlines.
 */
class WigleyTest {
    private static final double L = 12;
    private static final double B = 1.2;
    private static final double T = 0.75;

    /** z up from the keel, x from the forward end. */
    private static double wigley(double x, double z) {
        double xi = 2 * x / L - 1;
        double zeta = 1 - z / T;
        return B / 2 * (1 - xi * xi) * (1 - zeta * zeta);
    }

    private static double journeeFormOne(double x, double z) {
        double xi = 2 * x / L - 1;
        double zeta = 1 - z / T;
        double xi2 = xi * xi;
        double zeta2 = zeta * zeta;
        return B / 2 * ((1 - zeta2) * (1 - xi2) * (1 + 0.2 * xi2)
                + zeta2 * (1 - Math.pow(zeta, 8)) * Math.pow(1 - xi2, 4));
    }

    private static OffsetTable table(DoubleBinaryOperator y, DoubleUnaryOperator spacing, int waterlines) {
        Forms forms = new Forms(0, Forms.even(0, L, 21)).keel(x -> 0)
                .named(LineKind.SHEER, "Sheer", x -> y.applyAsDouble(x, T), x -> T);
        for (int i = 1; i < waterlines - 1; i++) {
            forms.waterline(T * spacing.applyAsDouble((double) i / (waterlines - 1)), y);
        }
        return forms.table();
    }

    private static Hull wigleyHull() {
        return Hull.through(table(WigleyTest::wigley, part -> part, 9));
    }

    /**
     * The form is of tenth degree in z with its bend at the keel: nine even waterlines leave any
     * cubic 9 mm out there (5/384 h^4 times the fourth derivative), so they stand closer below.
     */
    private static Hull journeeHull() {
        return Hull.through(table(WigleyTest::journeeFormOne, part -> part * part, 25));
    }

    private static double worst(Hull hull, DoubleBinaryOperator y) {
        double worst = 0;
        for (double x = 0.1 * L; x <= 0.9 * L; x += 0.083) {
            for (double z = 0.01; z < T; z += 0.0137) {
                worst = Math.max(worst, Math.abs(y.applyAsDouble(x, z) - hull.halfBreadth(x, z).orElseThrow()));
            }
        }
        return worst;
    }

    @Test
    void exact_wigleyBetweenTablePoints() {
        assertEquals(0, worst(wigleyHull(), WigleyTest::wigley), 0.2e-3);
    }

    @Test
    void published_journeeFormOneBetweenTablePoints() {
        assertEquals(0, worst(journeeHull(), WigleyTest::journeeFormOne), 0.2e-3);
    }
}
