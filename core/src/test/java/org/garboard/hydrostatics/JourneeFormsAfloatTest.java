package org.garboard.hydrostatics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.Curve;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.hull.HullCurves;
import org.garboard.offsets.LineKind;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * The four modified Wigley forms of J.M.J. Journee, DUT-SHL Report 0909, 1992: L 3 m, d 0.1875 m, half-breadth
 * (B/2)[(1 - zeta^2)(1 - xi^2)(1 + 0.2 xi^2) + alpha zeta^2 (1 - zeta^8)(1 - xi^2)^4].
 */
class JourneeFormsAfloatTest {
    private static final double L = 3;
    private static final double D = 0.1875;
    private static final int WATERLINES = 41;

    /** C_M as the report prints it; volume by an independent integration of the formula [m3]. */
    enum Form {
        I(0.3, 1, 0.909, 0.09462), II(0.6, 1, 0.909, 0.18925), III(0.3, 0, 0.667, 0.07800), IV(0.6, 0, 0.667, 0.15600);

        private final double b;
        private final double alpha;
        private final double midship;
        private final double volume;

        Form(double b, double alpha, double midship, double volume) {
            this.b = b;
            this.alpha = alpha;
            this.midship = midship;
            this.volume = volume;
        }

        double halfBreadth(double x, double z) {
            double xi2 = Math.pow(2 * x / L - 1, 2);
            double zeta2 = Math.pow(1 - z / D, 2);
            return b / 2 * ((1 - zeta2) * (1 - xi2) * (1 + 0.2 * xi2)
                + alpha * zeta2 * (1 - Math.pow(zeta2, 4)) * Math.pow(1 - xi2, 4));
        }

        /** Waterlines closer below, where the form bends most. */
        Hull hull() {
            Forms forms = new Forms(0, Forms.even(0, L, 41)).keel(x -> 0)
                .named(LineKind.SHEER, "Sheer", x -> halfBreadth(x, D), x -> D);
            for (int i = 1; i < WATERLINES - 1; i++) {
                forms.waterline(D * Math.pow((double) i / (WATERLINES - 1), 2), this::halfBreadth);
            }
            return Hull.through(forms.table());
        }
    }

    @ParameterizedTest
    @EnumSource(Form.class)
    void published_midshipCoefficient(Form form) {
        double area = 0;
        for (Curve curve : new HullCurves(form.hull()).section(L / 2, 1e-7)) {
            List<Vector3D> points = curve.points();
            for (int i = 1; i < points.size(); i++) {
                area += (points.get(i).getY() + points.get(i - 1).getY()) * (points.get(i).getZ() - points.get(i - 1).getZ());
            }
        }
        assertEquals(form.midship, area / (form.b * D), 0.0005, "half of the last digit printed");
    }

    /** C_WP = integral of (1 - xi^2)(1 + 0.2 xi^2) from 0 to 1 = 0.69333 for all four. */
    @ParameterizedTest
    @EnumSource(Form.class)
    void exact_volumeAndWaterplane(Form form) {
        Hydrostatics afloat = assertInstanceOf(Hydrostatics.class,
            Hydrostatics.of(form.hull(), WaterSurface.level(D)));
        assertEquals(form.volume, afloat.volume(), 6e-6, "half of the last digit, and what the table leaves open");
        assertEquals(1 - 0.8 / 3 - 0.2 / 5, afloat.waterplane().area() / (L * form.b), 2e-5);
    }
}
