package org.garboard.flow.panels;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The velocity of one panel against sums over many point sources on it. */
class SourcePanelTest {

    /** A quad in a slanted plane: the unit parallelogram stretched and sheared. */
    private static final double[] E1 = {0.6, 0.8, 0};
    private static final double[] E2 = {-0.48, 0.36, 0.8};

    private static PanelMesh panel(double length, double shear) {
        double[][] flat = {{0, 0}, {length, 0}, {length + shear, 1}, {shear, 1 - shear / 2}};
        double[] corners = new double[PanelMesh.CORNERS];
        for (int k = 0; k < 4; k++) {
            for (int i = 0; i < 3; i++) {
                corners[3 * k + i] = 0.3 + flat[k][0] * E1[i] + flat[k][1] * E2[i];
            }
        }
        return new PanelMesh(corners);
    }

    /** The middle rule on a parallelogram: 400 by 400 points. */
    private static double[] points(double[] place) {
        int n = 400;
        double[] v = new double[3];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j < n; j++) {
                double[] d = new double[3];
                double square = 0;
                for (int k = 0; k < 3; k++) {
                    d[k] = place[k] - 0.3 - (i + 0.5) / n * 2 * E1[k] - (j + 0.5) / n * E2[k];
                    square += d[k] * d[k];
                }
                for (int k = 0; k < 3; k++) {
                    v[k] += 2.0 / (n * n) * d[k] / (4 * Math.PI * square * Math.sqrt(square));
                }
            }
        }
        return v;
    }

    @ParameterizedTest
    @CsvSource({"0.5, 0.2, 0.9", "1.5, 1.1, 0.4", "0.1, 0.2, 0.0", "-0.4, 1.3, 1.1", "1.3, 1.7, 0.9"})
    void exact_closedFormIsTheSumOfPoints(double x, double y, double z) {
        SourcePanel source = new SourcePanel(panel(2, 0));
        source.at(0, x, y, z);
        double[] expected = points(new double[] {x, y, z});
        assertEquals(expected[0], source.vx, 2e-5);
        assertEquals(expected[1], source.vy, 2e-5);
        assertEquals(expected[2], source.vz, 2e-5);
    }

    /** Half of the source goes out on either side. */
    @Test
    void exact_ofItself() {
        PanelMesh mesh = panel(2, 0.5);
        SourcePanel source = new SourcePanel(mesh);
        source.ofItself(0);
        double out = source.vx * mesh.normal(0, 0) + source.vy * mesh.normal(0, 1) + source.vz * mesh.normal(0, 2);
        assertEquals(0.5, out, 1e-14);
        double near = 1e-7;
        source.at(0, mesh.centre(0, 0) - near * mesh.normal(0, 0), mesh.centre(0, 1) - near * mesh.normal(0, 1),
            mesh.centre(0, 2) - near * mesh.normal(0, 2));
        out = source.vx * mesh.normal(0, 0) + source.vy * mesh.normal(0, 1) + source.vz * mesh.normal(0, 2);
        assertEquals(-0.5, out, 1e-6);
    }

    @Test
    void exact_areaAndCentreOfAParallelogram() {
        PanelMesh mesh = panel(3, 0);
        assertEquals(3, mesh.area(0), 1e-12);
        assertEquals(0.3 + 1.5 * 0.6 - 0.5 * 0.48, mesh.centre(0, 0), 1e-12);
        assertEquals(0.3 + 1.5 * 0.8 + 0.5 * 0.36, mesh.centre(0, 1), 1e-12);
        assertEquals(0.3 + 0.5 * 0.8, mesh.centre(0, 2), 1e-12);
        assertEquals(Math.hypot(1.5, 0.5), mesh.radius(0), 1e-12);
    }

    /** What the class says of its far field: 0.15 % at the worst, over shapes and directions; 0.1 % of a point at many radii. */
    @ParameterizedTest
    @CsvSource({"1, 0", "1, 0.5", "2, 0", "2, 0.5", "5, 0", "5, 0.5"})
    void law_farFieldAgreesWithTheClosedForm(double length, double shear) {
        PanelMesh mesh = panel(length, shear);
        SourcePanel source = new SourcePanel(mesh);
        SplittableRandom lot = new SplittableRandom(11);
        double worst = 0;
        for (double radii : new double[] {5.001, 7, 10, 15, 25.9, 26.001, 40}) {
            for (int k = 0; k < 2000; k++) {
                double up = lot.nextDouble(-1, 1);
                double turn = lot.nextDouble(2 * Math.PI);
                double flat = Math.sqrt(1 - up * up);
                double r = radii * mesh.radius(0);
                double[] off = {r * flat * Math.cos(turn), r * flat * Math.sin(turn), r * up};
                worst = Math.max(worst, difference(mesh, source, off));
            }
        }
        assertTrue(worst < 1.5e-3, "worst " + worst);
    }

    private static double difference(PanelMesh mesh, SourcePanel source, double[] off) {
        double x = mesh.centre(0, 0) + off[0];
        double y = mesh.centre(0, 1) + off[1];
        double z = mesh.centre(0, 2) + off[2];
        source.at(0, x, y, z);
        double[] far = {source.vx, source.vy, source.vz};
        source.near(0, x, y, z);
        double size = Math.sqrt(source.vx * source.vx + source.vy * source.vy + source.vz * source.vz);
        return Math.sqrt(Math.pow(source.vx - far[0], 2) + Math.pow(source.vy - far[1], 2)
            + Math.pow(source.vz - far[2], 2)) / size;
    }

    @Test
    void aPanelWithoutAreaIsRefused() {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class,
            () -> new PanelMesh(new double[] {1, 2, 3, 2, 2, 3, 3, 2, 3, 4, 2, 3}));
        assertEquals("panel 0 at x = 1.0 m, y = 2.0 m, z = 3.0 m has no area", refused.getMessage());
    }
}
