package org.garboard.hydrostatics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.OffsetTable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Wigley's parabolic hull, half-breadth (B/2)(1 - (2x/L)^2)(1 - (z/T)^2), z from the waterline down, with L 100,
 * B 10, T 5, drawn through a table of 41 stations and 17 waterlines.
 */
class WigleyAfloatTest {
    private static final double L = 100;
    private static final double B = 10;
    private static final double T = 5;
    private static final int WATERLINES = 17;
    /**
     * What the table leaves open between its points: with half as many stations the figures near the stem are
     * thirty times farther off, with twice as many waterlines those near the sheer twenty times nearer.
     */
    private static final double SURFACE = 6e-5;

    private static double halfBreadth(double x, double z) {
        double xi = 2 * x / L - 1;
        return B / 2 * (1 - xi * xi) * fullness(z);
    }

    private static double fullness(double z) {
        double zeta = 1 - z / T;
        return 1 - zeta * zeta;
    }

    private static OffsetTable table() {
        Forms forms = new Forms(0, Forms.even(0, L, 41)).keel(x -> 0)
            .named(LineKind.SHEER, "Sheer", x -> halfBreadth(x, T), x -> T);
        for (int i = 1; i < WATERLINES - 1; i++) {
            forms.waterline(T * i / (WATERLINES - 1), WigleyAfloatTest::halfBreadth);
        }
        return forms.table();
    }

    private static Hydrostatics to(double z) {
        return assertInstanceOf(Hydrostatics.class, Hydrostatics.of(Hull.through(table()), WaterSurface.level(z)));
    }

    private static void assertNear(double expected, double actual, String what) {
        assertEquals(expected, actual, SURFACE * Math.abs(expected), what);
    }

    /** V = 4/9 L B T, KB = 5T/8, BM = 3 B^2 / (35 T), C_WP = 2/3: exact for the form. */
    @Test
    void exact_toTheDesignWaterline() {
        Hydrostatics afloat = to(T);
        assertNear(4.0 / 9 * L * B * T, afloat.volume(), "volume");
        assertNear(5 * T / 8, afloat.vcb(), "KB");
        assertNear(L / 2, afloat.lcb(), "LCB");
        assertNear(3 * B * B / (35 * T), afloat.transverseBm(), "BM");
        assertNear(2.0 / 3 * L * B, afloat.waterplane().area(), "waterplane");
        assertNear(L / 2, afloat.waterplane().lcf(), "LCF");
        assertNear(B * L * L * L / 30, afloat.waterplane().longitudinal(), "IL");
    }

    /** With s the height over T: the integrals of 2s - s^2 and its moment, of (1 - xi^2) and its cube. */
    @ParameterizedTest
    @ValueSource(doubles = {0.4, 1.3, 2.5, 3.77, 4.9})
    void exact_toOtherWaterlines(double z) {
        double s = z / T;
        double depth = s * s - s * s * s / 3;
        double g = fullness(z);
        Hydrostatics afloat = to(z);
        assertNear(2.0 / 3 * L * B * T * depth, afloat.volume(), "volume");
        assertNear(T * (2 * s * s * s / 3 - s * s * s * s / 4) / depth, afloat.vcb(), "KB");
        assertNear(2.0 / 3 * L * B * g, afloat.waterplane().area(), "waterplane");
        assertNear(2.0 / 3 * Math.pow(B * g / 2, 3) * L * 16 / 35, afloat.waterplane().transverse(), "IT");
        assertNear(B * g * L * L * L / 30, afloat.waterplane().longitudinal(), "IL");
        assertNear(L / 2, afloat.waterplane().lcf(), "LCF");
    }

    /** S / [L(2T + B)] and BM / L for B/L = .1, T/L = .0625. */
    @Test
    void exact_wettedSkinAndBm() {
        double draught = 6.25;
        Forms forms = new Forms(0, Forms.even(0, L, 41)).keel(x -> 0)
            .named(LineKind.SHEER, "Sheer", x -> halfBreadth(x, T), x -> draught);
        for (int i = 1; i < WATERLINES - 1; i++) {
            forms.waterline(draught * i / (WATERLINES - 1), (x, z) -> halfBreadth(x, z * T / draught));
        }
        Hydrostatics afloat = (Hydrostatics) Hydrostatics.of(Hull.through(forms.table()), WaterSurface.level(draught));
        assertEquals(0.66129, afloat.wettedSkin() / (L * (2 * draught + B)), 0.00005);
        assertEquals(0.013714, afloat.transverseBm() / L, 0.000002);
    }
}
