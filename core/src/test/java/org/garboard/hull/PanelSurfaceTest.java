package org.garboard.hull;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.TableLine;
import org.junit.jupiter.api.Test;

/** The surface against closed forms. */
class PanelSurfaceTest {
    private static final double R = 5;

    /** Lower cap of a sphere: centre at x = 0, height R; a chine where the table ends outboard. */
    private static double sphere(double x, double y) {
        return R - Math.sqrt(R * R - x * x - y * y);
    }

    private static Hull sphereHull() {
        Forms forms = new Forms(0, Forms.even(-1.5, 1.5, 17)).keel(x -> sphere(x, 0))
                .named(LineKind.CHINE, "Chine", x -> 1.5, x -> sphere(x, 1.5))
                .named(LineKind.SHEER, "Sheer", x -> 1.6, x -> 1.5);
        for (int i = 1; i < 6; i++) {
            forms.buttock(0.25 * i, PanelSurfaceTest::sphere);
        }
        return Hull.through(forms.table());
    }

    @Test
    void exact_spherePatchCurvatures() {
        Hull hull = sphereHull();
        for (double x = -1.45; x < 1.5; x += 0.07) {
            for (double y = 0.01; y < 1.5; y += 0.043) {
                SkinPoint point = hull.at(x, y).orElseThrow();
                assertEquals(1 / R, point.k1(), 0.005 / R, "k1 at " + x + ", " + y);
                assertEquals(1 / R, point.k2(), 0.005 / R, "k2 at " + x + ", " + y);
                assertEquals(x / R, point.nx(), 1e-4);
                assertEquals(y / R, point.ny(), 1e-4);
                assertEquals(sphere(x, y), point.z(), 1e-5);
            }
        }
    }

    @Test
    void law_portMirrorsStarboard() {
        Hull hull = sphereHull();
        SkinPoint starboard = hull.at(0.3, 0.7).orElseThrow();
        SkinPoint port = hull.at(0.3, -0.7).orElseThrow();
        assertEquals(starboard.z(), port.z());
        assertEquals(-starboard.ny(), port.ny());
        assertTrue(starboard.ny() > 0 && starboard.nz() < 0);
        assertEquals(starboard.deadrise(), port.deadrise());
        assertEquals(starboard.k1(), port.k1());
    }

    @Test
    void exact_girthOnTheSphere() {
        assertEquals(R * Math.asin(1.2 / R), sphereHull().girth(0, 1.2), 1e-5);
        assertEquals(R * Math.asin(1.2 / R), sphereHull().girth(0, -1.2), 1e-5);
    }

    /** Tangent of the deadrise of the warped bottom z = |y| tan(beta(x)), 18 degrees aft to 40 forward. */
    private static double warp(double x) {
        return Math.tan(Math.toRadians(18 + 22 * Math.pow(1 - x / 12, 2)));
    }

    private static OffsetTable warpedV(double leastCount) {
        return new Forms(leastCount, Forms.even(0, 12, 13)).keel(x -> 0)
                .buttock(0.825, (x, y) -> y * warp(x))
                .named(LineKind.CHINE, "Chine", x -> 1.65, x -> 1.65 * warp(x))
                .named(LineKind.SHEER, "Sheer", x -> 1.9, x -> 2.2).table();
    }

    private static double worstDeadriseDegrees(double leastCount, double from, double to) {
        Hull hull = Hull.through(warpedV(leastCount));
        double worst = 0;
        for (double x = from; x < to; x += 0.0731) {
            for (double y = 0.02; y < 1.64; y += 0.031) {
                double error = hull.at(x, y).orElseThrow().deadrise().radians() - Math.atan(warp(x));
                worst = Math.max(worst, Math.abs(Math.toDegrees(error)));
            }
        }
        return worst;
    }

    @Test
    void exact_warpedDeadriseUnrounded() {
        assertEquals(0, worstDeadriseDegrees(0, 0, 12), 0.005);
    }

    /**
     * Table to 0.1 mm, drawn through the points. Rounding alone can turn the end of a parabola through
     * three points by 4 * 0.05 / 825 = 0.014 degrees; the end bays, where a cubic is least held, are
     * left out.
     */
    @Test
    void exact_warpedDeadriseBetweenStations() {
        assertEquals(0, worstDeadriseDegrees(1e-4, 1, 11), 0.02);
    }

    /** Every point of the table lies on the surface within 0.01 mm. */
    @Test
    void law_passesThroughEveryTablePoint() {
        OffsetTable table = warpedV(0.0254 / 8);
        Hull hull = Hull.through(table);
        int seen = 0;
        for (TableLine line : table.lines()) {
            if (line.kind() == LineKind.BUTTOCK) {
                for (var entry : line.entries()) {
                    double x = table.stations().get(entry.station()).x();
                    assertEquals(entry.value(), hull.height(x, line.level()), 1e-5);
                    seen++;
                }
            }
        }
        assertEquals(13, seen);
    }

    @Test
    void exact_slopesOfATiltedPlane() {
        Hull hull = Hull.through(new Forms(0, 0, 1, 2.5, 4).keel(x -> 0.5 + 0.04 * x)
                .named(LineKind.CHINE, "Chine", x -> 1.0 + 0.1 * x, x -> 0.5 + 0.04 * x + (1.0 + 0.1 * x) * 0.36)
                .named(LineKind.SHEER, "Sheer", x -> 1.5, x -> 2.0).table());
        SkinPoint point = hull.at(1.7, 0.6).orElseThrow();
        assertEquals(Math.atan(0.36), point.deadrise().radians(), 1e-9);
        assertEquals(Math.atan(0.04), point.buttockSlope().radians(), 1e-9);
        assertEquals(0, point.k1(), 1e-9);
        assertEquals(0.5 + 0.04 * 1.7 + 0.6 * 0.36, hull.height(1.7, -0.6), 1e-12);
        assertTrue(hull.at(1.7, 1.8).isEmpty());
        assertTrue(hull.at(-0.01, 0.2).isEmpty());
        assertTrue(Double.isNaN(hull.height(4.01, 0.2)));
    }

    @Test
    void exact_waterlineOfAWedge() {
        Hull hull = Hull.through(new Forms(0, 0, 1, 2.5, 4).keel(x -> 0.04 * x)
                .named(LineKind.CHINE, "Chine", x -> 1.0, x -> 0.04 * x + 0.36)
                .named(LineKind.SHEER, "Sheer", x -> 1.5, x -> 2.0).table());
        List<Curve> curves = new HullCurves(hull).waterline(0.3, 1e-5);
        assertEquals(1, curves.size());
        List<Vector3D> points = curves.get(0).points();
        assertEquals(0, points.get(0).getX(), 1e-9);
        assertEquals(4, points.get(points.size() - 1).getX(), 1e-9);
        for (Vector3D point : points) {
            assertEquals(0.3, point.getZ(), 1e-9);
            assertEquals((0.3 - 0.04 * point.getX()) / 0.36, point.getY(), 1e-7);
        }
    }

    @Test
    void exact_buttockStaysInItsPlaneAndOnTheSphere() {
        List<Curve> curves = new HullCurves(sphereHull()).buttock(0.6, 1e-5);
        assertEquals(1, curves.size());
        for (Vector3D point : curves.get(0).points()) {
            assertEquals(0.6, point.getY(), 1e-9);
            assertEquals(sphere(point.getX(), 0.6), point.getZ(), 2e-5);
        }
    }

    /** Two kinds of rows at one chine: the panels meet without a gap. */
    @Test
    void law_panelsMeetAtTheirLine() {
        Hull hull = Hull.through(warpedV(0.0254 / 8));
        double[] one = new double[Panel.POINT_SIZE];
        double[] other = new double[Panel.POINT_SIZE];
        for (double x = 0; x <= 12; x += 0.17) {
            hull.panels().get(0).evaluate(x, 1, one, 0);
            hull.panels().get(1).evaluate(x, 0, other, 0);
            assertEquals(one[Panel.Y], other[Panel.Y], 1e-12);
            assertEquals(one[Panel.Z], other[Panel.Z], 1e-12);
        }
    }
}
