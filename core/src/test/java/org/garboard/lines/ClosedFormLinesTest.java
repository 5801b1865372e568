package org.garboard.lines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.Curve;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.offsets.LineKind;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Diagonals, girths and combs of hulls in closed form. */
class ClosedFormLinesTest {
    private static final double R = 5;

    private static double sphere(double x, double y) {
        return R - Math.sqrt(R * R - x * x - y * y);
    }

    /** The lower cap of a sphere of radius 5, centre at (0, 0, 5). */
    private static Hull sphereHull() {
        Forms forms = new Forms(0, Forms.even(-1.5, 1.5, 33)).keel(x -> sphere(x, 0))
            .named(LineKind.CHINE, "Chine", x -> 1.5, x -> sphere(x, 1.5))
            .named(LineKind.SHEER, "Sheer", x -> 1.6, x -> 1.5);
        for (int i = 1; i < 12; i++) {
            forms.buttock(0.125 * i, ClosedFormLinesTest::sphere);
        }
        return Hull.through(forms.table());
    }

    /** A trough of one circular section, radius 2, its axis level at height 2. */
    private static Hull cylinder() {
        Forms forms = new Forms(0, 0, 2, 5, 7).keel(x -> 0)
            .named(LineKind.SHEER, "Sheer", x -> 2, x -> 2);
        for (int i = 1; i < 32; i++) {
            double turn = Math.PI / 2 * i / 32;
            if (i < 16) {
                forms.buttock(2 * Math.sin(turn), (x, y) -> 2 - 2 * Math.cos(turn));
            } else {
                forms.waterline(2 - 2 * Math.cos(turn), (x, z) -> 2 * Math.sin(turn));
            }
        }
        return Hull.through(forms.table());
    }

    /** Flat floor to 0.5, a bilge that is a quarter of a circle of radius 0.8, a plumb side to 2. */
    private static Hull roundBilge() {
        Forms forms = new Forms(0, 0, 2, 5, 7).keel(x -> 0)
            .named(LineKind.CHINE, "Floor", x -> 0.5, x -> 0)
            .named(LineKind.CHINE, "Bilge", x -> 1.3, x -> 0.8)
            .named(LineKind.SHEER, "Sheer", x -> 1.3, x -> 2);
        for (int i = 1; i < 24; i++) {
            double turn = Math.PI / 2 * i / 24;
            if (i < 12) {
                forms.buttock(0.5 + 0.8 * Math.sin(turn), (x, y) -> 0.8 - 0.8 * Math.cos(turn));
            } else {
                forms.waterline(0.8 - 0.8 * Math.cos(turn), (x, z) -> 0.5 + 0.8 * Math.sin(turn));
            }
        }
        return Hull.through(forms.table());
    }

    @Test
    void exact_girthOfACircularBilge() {
        double[] girths = ExpandedSection.girths(roundBilge(), 3.3);
        assertEquals(0.5, girths[1], 1e-9);
        assertEquals(0.5 + 0.8 * Math.PI / 2, girths[2], 1e-6);
        assertEquals(0.5 + 0.8 * Math.PI / 2 + 1.2, girths[3], 1e-6);
        assertEquals(0, ExpandedSection.girths(roundBilge(), 7.1).length);
    }

    /** On the bilge the height at girth g is that of the arc from the floor. */
    @Test
    void exact_expandedBilge() {
        Curve bilge = ExpandedSection.evenlyAt(roundBilge(), 3.3, 0.1).get(1);
        List<Vector3D> points = bilge.points();
        assertEquals(1 + Math.ceil(0.8 * Math.PI / 2 / 0.1), points.size());
        for (int i = 0; i < points.size(); i++) {
            double arc = 0.8 * Math.PI / 2 * i / (points.size() - 1);
            assertEquals(0.5 + arc, points.get(i).getY(), 1e-6);
            assertEquals(0.8 - 0.8 * Math.cos(arc / 0.8), points.get(i).getZ(), 1e-5);
        }
        List<Vector3D> close = ExpandedSection.at(roundBilge(), 3.3, 1e-4).get(1).points();
        assertEquals(0.5, close.get(0).getY(), 1e-9);
        assertEquals(0.5 + 0.8 * Math.PI / 2, close.get(close.size() - 1).getY(), 1e-6);
    }

    /** The line from (0, z) down at the angle meets the circle where t^2 + 2 t (2 - z) sin = 4 - (2 - z)^2. */
    @Test
    void exact_diagonalsOnACylinder() {
        for (double degrees : new double[] {10, 30, 45, 70, 85}) {
            for (double z : new double[] {0.5, 1, 1.9}) {
                double below = Math.toRadians(degrees);
                double t = -(2 - z) * Math.sin(below) + Math.sqrt(Math.pow((2 - z) * Math.sin(below), 2) + 4 - (2 - z) * (2 - z));
                DrawnLine.Diagonal diagonal = new DrawnLine.Diagonal(z, Angle.ofDegrees(degrees));
                List<Curve> curves = diagonal.on(cylinder(), 1e-5);
                assertEquals(1, curves.size(), degrees + " from " + z);
                List<Vector3D> points = curves.get(0).points();
                assertEquals(0, points.get(0).getX(), 1e-9);
                assertEquals(7, points.get(points.size() - 1).getX(), 1e-9);
                for (Vector3D point : points) {
                    assertEquals(t * Math.cos(below), point.getY(), 5e-6);
                    assertEquals(z - t * Math.sin(below), point.getZ(), 5e-6);
                    assertEquals(t, diagonal.outward(point.getY()), 1e-5);
                }
            }
        }
    }

    @Test
    void law_diagonalKeepsToItsPlane() {
        DrawnLine.Diagonal diagonal = new DrawnLine.Diagonal(0.7, Angle.ofDegrees(40));
        int seen = 0;
        for (Curve curve : diagonal.on(sphereHull(), 1e-5)) {
            for (Vector3D point : curve.points()) {
                assertEquals(0.7 - point.getY() * Math.tan(Math.toRadians(40)), point.getZ(), 1e-9);
                seen++;
            }
        }
        assertTrue(seen > 10);
    }

    @Test
    void badInput_diagonalThatIsAWaterline() {
        assertEquals("a diagonal runs more than 0 and less than 90 deg below the horizontal, not 0.0 deg",
            assertThrows(IllegalArgumentException.class, () -> new DrawnLine.Diagonal(1, Angle.ofDegrees(0))).getMessage());
    }

    /**
     * A plane at a distance d from the centre cuts a circle of radius sqrt(R^2 - d^2): one curvature all along.
     * In the end bays of a table, h wide, the second derivative of a cubic spline is off by up to 11/12 h^2 times the
     * fourth, 0.0004 here; a plane that cuts the skin at a slant shows it by that much more.
     */
    @Test
    void exact_combsOfASphere() {
        double below = Math.toRadians(40);
        assertCircle(new DrawnLine.Section(0.4), 0.4);
        assertCircle(new DrawnLine.Buttock(0.6), 0.6);
        assertCircle(new DrawnLine.Waterline(0.15), R - 0.15);
        assertCircle(new DrawnLine.Diagonal(0.7, Angle.ofDegrees(40)), (R - 0.7) * Math.cos(below));
    }

    private static void assertCircle(DrawnLine.Cut line, double distance) {
        double curvature = 1 / Math.sqrt(R * R - distance * distance);
        Vector3D centre = Vector3D.of(0, 0, R).subtract(line.square().multiply(distance(line)));
        List<Comb> combs = Comb.of(sphereHull(), line, 0.05);
        assertEquals(1, combs.size());
        int seen = 0;
        for (Tooth tooth : combs.get(0).branches().stream().flatMap(List::stream).toList()) {
            if (tooth.foot().getZ() < sphere(tooth.foot().getX(), 1.5) - 1e-3) {
                assertEquals(curvature, tooth.curvature(), 0.0004 * R * curvature, line + " at " + tooth.foot());
                assertEquals(0, tooth.away().distance(tooth.foot().subtract(centre).normalize()), 1e-4, line + " at " + tooth.foot());
                seen++;
            }
        }
        assertTrue(seen > 20, line.toString());
    }

    /** From the plane to the sphere's centre, along the plane's square. */
    private static double distance(DrawnLine.Cut line) {
        Vector3D on = line.on(sphereHull(), 1e-3).get(0).points().get(0);
        return Vector3D.of(0, 0, R).subtract(on).dot(line.square());
    }

    /** Keel z = (x - 2)^2 / 10, hollow upwards: teeth below it; chine straight in plan. */
    @Test
    void exact_combOfAParabolicKeel() {
        Hull hull = Hull.through(new Forms(0, 0, 1, 2.5, 4, 6).keel(x -> (x - 2) * (x - 2) / 10)
            .named(LineKind.CHINE, "Chine", x -> 0.5 + x / 10, x -> 0.3 + (x - 2) * (x - 2) / 10)
            .named(LineKind.SHEER, "Sheer", x -> 1.5, x -> 3).table());
        List<Comb> keel = Comb.of(hull, new DrawnLine.Named(hull.keel()), 0.1);
        assertEquals(1, keel.size());
        for (Tooth tooth : keel.get(0).branches().get(0)) {
            double slope = (tooth.foot().getX() - 2) / 5;
            double length = Math.sqrt(1 + slope * slope);
            assertEquals(0.2 / Math.pow(length, 3), tooth.curvature(), 1e-9);
            assertEquals(0, tooth.away().distance(Vector3D.of(slope / length, 0, -1 / length)), 1e-9);
        }
        assertEquals(0.2, keel.get(0).largest(), 1e-4);
        List<Comb> chine = Comb.of(hull, new DrawnLine.Named(hull.lines().get(1)), 0.1);
        assertEquals(List.of(Vector3D.of(0, 1, 0), Vector3D.of(0, 0, 1)), chine.stream().map(Comb::square).toList());
        assertEquals(0.2, chine.get(0).largest(), 1e-4);
        assertEquals(0, chine.get(1).largest(), 1e-9);
    }

    /** An S in plan, y = 1 + s^3 / 20 from amidships: teeth change sides where it turns. */
    @Test
    void exact_teethChangeSidesAtATurn() {
        Hull hull = Hull.through(new Forms(0, 0, 1, 2, 4, 5, 6).keel(x -> 0)
            .named(LineKind.CHINE, "Chine", x -> 2 + Math.pow(x - 3, 3) / 20, x -> 0.3)
            .named(LineKind.SHEER, "Sheer", x -> 4, x -> 3).table());
        for (Tooth tooth : Comb.of(hull, new DrawnLine.Named(hull.lines().get(1)), 0.1).get(1).branches().get(0)) {
            double s = tooth.foot().getX() - 3;
            assertEquals(Math.abs(0.3 * s) / Math.pow(1 + Math.pow(3 * s * s / 20, 2), 1.5), tooth.curvature(), 1e-9);
            if (Math.abs(s) > 0.01) {
                assertEquals(s > 0, tooth.away().getY() < 0, "at " + s);
            }
        }
    }

    @Test
    void law_noCombWhereTheLineMissesTheHull() {
        assertEquals(List.of(), Comb.of(sphereHull(), new DrawnLine.Section(9), 0.1));
    }
}
