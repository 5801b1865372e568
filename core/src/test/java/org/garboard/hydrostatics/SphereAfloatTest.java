package org.garboard.hydrostatics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.offsets.LineKind;
import org.garboard.units.Angle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The cap that the water cuts from a sphere of radius 5, centre at (0, 0, 5), is the same to every trim: waterlines
 * and areas that begin and end like a square root.
 */
class SphereAfloatTest {
    private static final double R = 5;

    private static double height(double x, double y) {
        return R - Math.sqrt(R * R - x * x - y * y);
    }

    private static Hull sphere() {
        Forms forms = new Forms(0, Forms.even(-1.5, 1.5, 33)).keel(x -> height(x, 0))
            .named(LineKind.CHINE, "Chine", x -> 1.5, x -> height(x, 1.5))
            .named(LineKind.SHEER, "Sheer", x -> 1.6, x -> 1.5);
        for (int i = 1; i < 12; i++) {
            forms.buttock(0.125 * i, SphereAfloatTest::height);
        }
        return Hull.through(forms.table());
    }

    @ParameterizedTest
    @CsvSource({"0.15, 0, 0", "0.15, 0.4, 0", "0.12, 0, 3", "0.12, 0, -3", "0.12, 0.3, 5"})
    void exact_capOfASphere(double z, double about, double trim) {
        double tau = Math.toRadians(trim);
        double distance = (R - z + about * Math.tan(tau)) * Math.cos(tau);
        double depth = R - distance;
        double volume = Math.PI * depth * depth * (3 * R - depth) / 3;
        double arm = 3 * Math.pow(2 * R - depth, 2) / (4 * (3 * R - depth));
        double radius = Math.sqrt(R * R - distance * distance);
        Hydrostatics cap = assertInstanceOf(Hydrostatics.class,
            Hydrostatics.of(sphere(), new WaterSurface(z, about, Angle.ofDegrees(trim))));
        assertEquals(volume, cap.volume(), 1e-6 * volume);
        assertEquals(arm * Math.sin(tau), cap.lcb(), 1e-6);
        assertEquals(R - arm * Math.cos(tau), cap.vcb(), 1e-6);
        assertEquals(2 * Math.PI * R * depth, cap.wettedSkin(), 1e-6 * R * depth);
        assertEquals(Math.PI * radius * radius, cap.waterplane().area(), 1e-6 * radius * radius);
        assertEquals(distance * Math.sin(tau), cap.waterplane().lcf(), 1e-6);
        double second = Math.PI * Math.pow(radius, 4) / 4;
        assertEquals(second, cap.waterplane().transverse(), 1e-6 * second);
        assertEquals(second, cap.waterplane().longitudinal(), 1e-6 * second);
        assertEquals(second / volume, cap.transverseBm(), 1e-6 * second / volume);
    }
}
