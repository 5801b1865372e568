package org.garboard.hull;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.PanelName;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.SkinThickness;
import org.junit.jupiter.api.Test;

/** Tables to the inside of the skin, against closed forms of the outside. */
class OutsideTest {
    private static final double T = 0.032;
    private static final double R = 2;

    private static double arc(double radius, double away) {
        return R - Math.sqrt(radius * radius - away * away);
    }

    /** A round bottom of radius R, its axis at height R, 75 degrees of it to the sheer. */
    private static Hull cylinder(double thickness) {
        double top = Math.toRadians(75);
        Forms forms = new Forms(0, Forms.even(0, 6, 7)).inside(thickness).keel(x -> 0)
                .named(LineKind.SHEER, "Sheer", x -> R * Math.sin(top), x -> R - R * Math.cos(top));
        for (int i = 1; i < 30; i++) {
            double y = R * Math.sin(top * i / 30);
            forms.buttock(y, (x, at) -> arc(R, at));
        }
        return Hull.through(forms.table());
    }

    /** The spline inside is itself 0.0008 mm off the arc, and its curvature 1 in 800; near its ends 1 in 130. */
    @Test
    void exact_cylinder() {
        Hull hull = cylinder(T);
        for (double x = 0; x <= 6; x += 0.37) {
            for (double y = 0; y < 1.9; y += 0.0083) {
                SkinPoint point = hull.at(x, y).orElseThrow();
                assertEquals(arc(R + T, y), point.z(), 1e-6, "z at " + y);
                assertEquals(1 / (R + T), point.k1(), (y > 0.2 && y < 1.7 ? 1.3e-3 : 8e-3) / R, "k1 at " + y);
                assertEquals(0, point.k2(), 1e-6, "k2 at " + y);
                assertEquals((R + T) * Math.asin(y / (R + T)), hull.girth(x, y), 1e-6, "girth at " + y);
            }
        }
        List<Vector3D> section = new HullCurves(hull).section(3, 1e-5).get(0).points();
        for (Vector3D point : section) {
            assertEquals(R + T, Math.hypot(point.getY(), R - point.getZ()), 1e-6);
        }
        assertEquals((R + T) * Math.sin(Math.toRadians(75)), section.get(section.size() - 1).getY(), 1e-6);
    }

    private static final double SPHERE = 5;

    private static double sphere(double x, double y) {
        return SPHERE - Math.sqrt(SPHERE * SPHERE - x * x - y * y);
    }

    private static Hull sphereHull(double thickness) {
        Forms forms = new Forms(0, Forms.even(-1.5, 1.5, 17)).inside(thickness).keel(x -> sphere(x, 0))
                .named(LineKind.CHINE, "Chine", x -> 1.5, x -> sphere(x, 1.5))
                .named(LineKind.SHEER, "Sheer", x -> 1.6, x -> 1.5);
        for (int i = 1; i < 6; i++) {
            forms.buttock(0.25 * i, OutsideTest::sphere);
        }
        return Hull.through(forms.table());
    }

    /** Right up to the end stations: their outside stands on inside places up to 9 mm nearer the middle. */
    @Test
    void exact_sphere() {
        Hull hull = sphereHull(T);
        double r = SPHERE + T;
        for (double x = -1.5; x <= 1.5; x += 0.06) {
            for (double y = 0; y < 1.5; y += 0.043) {
                SkinPoint point = hull.at(x, y).orElseThrow();
                assertEquals(SPHERE - Math.sqrt(r * r - x * x - y * y), point.z(), 1e-5);
                assertEquals(1 / r, point.k1(), 0.005 / r, "k1 at " + x + ", " + y);
                assertEquals(1 / r, point.k2(), 0.005 / r, "k2 at " + x + ", " + y);
                assertEquals(x / r, point.nx(), 1e-4);
                assertEquals(y / r, point.ny(), 1e-4);
            }
        }
    }

    private static final double KEEL_SLOPE = -0.07;
    private static final double TAN_BOTTOM = Math.tan(Math.toRadians(20));
    private static final double TAN_SIDE = Math.tan(Math.toRadians(75));
    private static final double SPREAD = -0.05;

    private static double chineY(double x) {
        return 1.2 + SPREAD * x;
    }

    private static double bottomZ(double x, double y) {
        return 0.6 + KEEL_SLOPE * x + TAN_BOTTOM * y;
    }

    /** Planes: a V bottom that falls aft, 20 degrees of deadrise, and sides of 75 degrees that draw in aft. */
    private static Forms planes() {
        return new Forms(0, 0, 1, 2.5, 4, 5, 6).keel(x -> bottomZ(x, 0))
                .named(LineKind.CHINE, "Chine", OutsideTest::chineY, x -> bottomZ(x, chineY(x)))
                .named(LineKind.SHEER, "Sheer", x -> chineY(x) + 0.2, x -> bottomZ(x, chineY(x)) + 0.2 * TAN_SIDE);
    }

    /** How far a plane z = c + a x + b y falls when it is moved out by t, square to itself. */
    private static double fall(double a, double b, double t) {
        return t * Math.sqrt(1 + a * a + b * b);
    }

    private static double sideSlope() {
        return KEEL_SLOPE + TAN_BOTTOM * SPREAD - TAN_SIDE * SPREAD;
    }

    private static double outsideBottom(double x, double y, double t) {
        return bottomZ(x, y) - fall(KEEL_SLOPE, TAN_BOTTOM, t);
    }

    private static double outsideSide(double x, double y, double t) {
        return bottomZ(x, chineY(x)) + TAN_SIDE * (y - chineY(x)) - fall(sideSlope(), TAN_SIDE, t);
    }

    private static double outsideChine(double x, double bottom, double side) {
        return (outsideBottom(x, 0, bottom) - outsideSide(x, 0, side)) / (TAN_SIDE - TAN_BOTTOM);
    }

    private static void assertPlanes(Hull hull, double bottom, double side) {
        HullLine chine = hull.lines().get(1);
        for (double x = 0; x <= 6; x += 0.0999) {
            assertEquals(outsideBottom(x, 0, bottom), hull.keel().z(x), 1e-9, "keel at " + x);
            assertEquals(0, hull.keel().y(x), 1e-15);
            double y = outsideChine(x, bottom, side);
            assertEquals(y, chine.y(x), 1e-9, "chine at " + x);
            assertEquals(outsideBottom(x, y, bottom), chine.z(x), 1e-9, "chine at " + x);
            assertEquals(outsideBottom(x, 0.7, bottom), hull.height(x, -0.7), 1e-9);
            assertEquals(outsideSide(x, y + 0.1, side), hull.height(x, y + 0.1), 1e-9);
            assertEquals(Math.atan(TAN_BOTTOM), hull.at(x, 0.7).orElseThrow().deadrise().radians(), 1e-9);
        }
    }

    /** Forward the bottom's outside stands on places ahead of the table's end, for it falls aft. */
    @Test
    void exact_planes() {
        assertPlanes(Hull.through(planes().inside(T).table()), T, T);
    }

    @Test
    void exact_planesOfTwoThicknesses() {
        assertPlanes(Hull.through(planes().inside(new SkinThickness.ByPanel(List.of(
                new SkinThickness.OfPanel(new PanelName("Chine", "Sheer"), 0.02),
                new SkinThickness.OfPanel(new PanelName("Keel", "Chine"), 0.05)))).table()), 0.05, 0.02);
    }

    /** The keel falls by thickness over cosine of the deadrise; the chine is where two lines meet. */
    @Test
    void exact_prismaticV() {
        double beta = Math.toRadians(18);
        double flare = Math.toRadians(80);
        Hull hull = Hull.through(new Forms(0, 0, 2, 4).keel(x -> 0)
                .named(LineKind.CHINE, "Chine", x -> 1, x -> Math.tan(beta))
                .named(LineKind.SHEER, "Sheer", x -> 1.1, x -> Math.tan(beta) + 0.1 * Math.tan(flare))
                .inside(T).table());
        assertEquals(-T / Math.cos(beta), hull.height(1.3, 0), 1e-10);
        double half = (flare - beta) / 2;
        double bisector = (flare + beta) / 2;
        assertEquals(1 + T / Math.cos(half) * Math.sin(bisector), hull.lines().get(1).y(1.3), 1e-10);
        assertEquals(Math.tan(beta) - T / Math.cos(half) * Math.cos(bisector), hull.lines().get(1).z(1.3), 1e-10);
        HullLine sheer = hull.lines().get(2);
        assertEquals(1.1 + T * Math.sin(flare), sheer.y(1.3), 1e-10);
        assertEquals(Math.tan(beta) + 0.1 * Math.tan(flare) - T * Math.cos(flare), sheer.z(1.3), 1e-10);
    }

    /** A flat keel stays flat; a chine flat and the hollow corner inboard of it are cut short, not drawn on. */
    @Test
    void exact_flatKeelAndChineFlat() {
        double rise = Math.tan(Math.toRadians(15));
        double inner = 0.15 + 0.85 * rise;
        Hull hull = Hull.through(new Forms(0, 0, 2, 4, 5, 6).keel(x -> 0.1)
                .halfSiding(x -> 0.15)
                .named(LineKind.CHINE, "Inner chine", x -> 1, x -> 0.1 + inner - 0.15)
                .named(LineKind.CHINE, "Chine", x -> 1.08, x -> 0.1 + inner - 0.15)
                .named(LineKind.SHEER, "Sheer", x -> 1.08, x -> 1.2).inside(T).table());
        double turn = T * Math.tan(Math.toRadians(7.5));
        double chine = inner - 0.05;
        double[][] expected = {{0, 0.1 - T}, {0.15 + turn, 0.1 - T}, {1 + turn, chine - T}, {1.08 + T, chine - T},
            {1.08 + T, 1.2}};
        for (int l = 0; l < expected.length; l++) {
            assertEquals(expected[l][0], hull.lines().get(l).y(3.1), 1e-10, "line " + l);
            assertEquals(expected[l][1], hull.lines().get(l).z(3.1), 1e-10, "line " + l);
        }
    }

    @Test
    void law_mirrors() {
        Hull hull = sphereHull(T);
        SkinPoint starboard = hull.at(0.3, 0.7).orElseThrow();
        SkinPoint port = hull.at(0.3, -0.7).orElseThrow();
        SkinPoint forward = hull.at(-0.3, 0.7).orElseThrow();
        assertEquals(starboard.z(), port.z());
        assertEquals(-starboard.ny(), port.ny());
        assertEquals(starboard.z(), forward.z(), 1e-9);
        assertEquals(-starboard.nx(), forward.nx(), 1e-7);
    }

    /** Skin without thickness, drawn the long way: the inside's own panels come back. */
    @Test
    void law_noThicknessChangesNothing() {
        for (Bottoms bottom : Bottoms.all()) {
            Hull inside = Hull.through(bottom.table(0.001, 0));
            Hull outside = OutsideLoft.of(inside, new double[] {0, 0});
            double[] one = new double[Panel.POINT_SIZE];
            double[] other = new double[Panel.POINT_SIZE];
            for (int p = 0; p < 2; p++) {
                for (double x = 0; x <= Bottoms.LENGTH; x += 0.0917) {
                    for (double v = 0; v <= 1; v += 0.0625) {
                        inside.panels().get(p).evaluate(x, v, one, 0);
                        outside.panels().get(p).evaluate(x, v, other, 0);
                        assertEquals(one[Panel.Y], other[Panel.Y], 1e-12);
                        assertEquals(one[Panel.Z], other[Panel.Z], 1e-12);
                        assertEquals(one[Panel.K1], other[Panel.K1], 1e-8);
                    }
                }
            }
        }
    }

    @Test
    void law_panelsMeetAtTheirLine() {
        Hull hull = Hull.through(inside(Bottoms.all().get(3).table(0.001, 0), T));
        double[] one = new double[Panel.POINT_SIZE];
        double[] other = new double[Panel.POINT_SIZE];
        for (double x = 0; x <= Bottoms.LENGTH; x += 0.17) {
            hull.panels().get(0).evaluate(x, 1, one, 0);
            hull.panels().get(1).evaluate(x, 0, other, 0);
            assertEquals(one[Panel.Y], other[Panel.Y], 1e-12);
            assertEquals(one[Panel.Z], other[Panel.Z], 1e-12);
            assertEquals(hull.lines().get(1).y(x), one[Panel.Y], 1e-12);
            hull.panels().get(0).evaluate(x, 0, one, 0);
            assertEquals(0, one[Panel.Y], 1e-15);
        }
    }

    private static OffsetTable inside(OffsetTable table, double thickness) {
        SkinSurface surface = new SkinSurface.Inside(SkinSurface.Covering.PLANKING, new SkinThickness.Everywhere(thickness));
        return new OffsetTable(table.title(), surface, table.leastCount(), table.stations(), table.lines());
    }

    /**
     * From every place of the inside, bow and all, the thickness square to it ends on the outside within
     * 0.05 mm, and there the two are parallel.
     */
    private static void assertParallel(Hull inside, Hull outside, double thickness, double degrees) {
        double[] in = new double[Panel.POINT_SIZE];
        double[] out = new double[Panel.POINT_SIZE];
        int seen = 0;
        for (double x = inside.forwardEnd(); x <= inside.afterEnd(); x += 0.0817) {
            for (double v = 0; v <= 1; v += 0.0313) {
                inside.panels().get(0).evaluate(x, v, in, 0);
                double outX = x + thickness * in[Panel.NX];
                double outY = in[Panel.Y] + thickness * in[Panel.NY];
                double outZ = in[Panel.Z] + thickness * in[Panel.NZ];
                if (outside.evaluate(outX, outY, out, 0)) {
                    String where = " from " + x + ", " + v;
                    assertEquals(0, (out[Panel.Z] - outZ) * in[Panel.NZ], 5e-5, where);
                    double cosine = in[Panel.NX] * out[Panel.NX] + in[Panel.NY] * out[Panel.NY] + in[Panel.NZ] * out[Panel.NZ];
                    assertEquals(0, Math.toDegrees(Math.acos(Math.min(1, cosine))), degrees, where);
                    seen++;
                }
            }
        }
        assertTrue(seen > 4000, "places seen: " + seen);
    }

    @Test
    void law_standsSquareToAFairedInside() {
        for (Bottoms bottom : Bottoms.all()) {
            OffsetTable table = bottom.table(0.0254 / 8, 0);
            assertParallel(Hull.faired(table), Hull.faired(inside(table, T)), T, 0.03);
        }
    }

    @Test
    void law_standsSquareToAnInsideThroughThePoints() {
        for (Bottoms bottom : Bottoms.all()) {
            OffsetTable table = bottom.table(0, 0);
            assertParallel(Hull.through(table), Hull.through(inside(table, 0.006)), 0.006, 0.03);
            assertParallel(Hull.through(table), Hull.through(inside(table, T)), T, 0.03);
        }
    }

    private static final String NOT_DRAWN = "the outside of the skin cannot be drawn at x = 4.000 m: ";

    private static String refusal(Forms forms) {
        OffsetTable table = forms.table();
        return assertThrows(HullNotDrawn.class, () -> Hull.through(table)).getMessage();
    }

    /** 5 mm of difference where two faces are 2 degrees off one plane: a step, no knuckle. */
    @Test
    void badInput_stepBetweenThicknesses() {
        SkinThickness two = new SkinThickness.ByPanel(List.of(new SkinThickness.OfPanel(new PanelName("Keel", "Chine"), 0.03),
            new SkinThickness.OfPanel(new PanelName("Chine", "Sheer"), 0.025)));
        assertEquals(NOT_DRAWN + "at Chine the outsides of Keel to Chine (30.0 mm thick) and of Chine to Sheer (25.0 mm"
            + " thick) do not meet; they lie nearly in one there: give both the same thickness",
            refusal(new Forms(0, 0, 2, 4).keel(x -> 0)
                .named(LineKind.CHINE, "Chine", x -> 1, x -> Math.tan(Math.toRadians(20)))
                .named(LineKind.SHEER, "Sheer", x -> 2, x -> Math.tan(Math.toRadians(20)) + Math.tan(Math.toRadians(22)))
                .inside(two)));
    }

    /** A hollow of 22 mm radius takes no planking of 32 mm. */
    @Test
    void badInput_hollowSharperThanTheSkinIsThick() {
        DoubleUnaryOperator z = y -> 0.25 + 0.5 * y - 0.5 * Math.hypot(y - 0.5, 0.008);
        Forms forms = new Forms(0, 0, 2, 4).keel(x -> z.applyAsDouble(0))
                .named(LineKind.SHEER, "Sheer", x -> 1, x -> z.applyAsDouble(1));
        for (int i = 1; i < 200; i++) {
            forms.buttock(0.005 * i, (x, at) -> z.applyAsDouble(at));
        }
        assertEquals(NOT_DRAWN + "Keel to Sheer is hollowed there more sharply than its skin is thick;"
            + " correct the one or the other", refusal(forms.inside(T)));
    }

    @Test
    void badInput_ledgeNarrowerThanTheSkinIsThick() {
        assertEquals(NOT_DRAWN + "Lower edge to Upper edge is narrower there than its skin is thick; correct the one or"
            + " the other", refusal(new Forms(0, 0, 2, 4).keel(x -> 0)
                .named(LineKind.CHINE, "Lower edge", x -> 0.5, x -> 0.866)
                .named(LineKind.CHINE, "Upper edge", x -> 0.5104, x -> 0.872)
                .named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 0.9).inside(T)));
    }

    @Test
    void badInput_knifeOfAKeel() {
        assertEquals(NOT_DRAWN + "at Keel the bottom is so steep that its outsides meet only far below; give the"
            + " half-siding of the keel", refusal(new Forms(0, 0, 2, 4).keel(x -> 0)
                .named(LineKind.SHEER, "Sheer", x -> 0.2, x -> 1).inside(T)));
    }

    /**
     * The fore half of Wigley's hull (see {@link WigleyTest}), which forward comes to a knife's edge, its keel
     * too: its deadrise there has the tangent T / (B (1 - xi^2)). Where that is more than 4, x = 0.489 m, nothing
     * is drawn; what is drawn begins at the next sixteenth of the first bay, 0.6 m.
     */
    @Test
    void exact_knifeEdgeForwardIsLeftOut() {
        Hull hull = Hull.through(wigley(0, 6));
        double end = 6 * (1 - Math.sqrt(1 - 0.75 / (4 * 1.2)));
        assertEquals(end + 0.01875, hull.forwardEnd(), 0.01875 + 0.002, "the sections bend by as little as 2 mm");
        assertEquals(6, hull.afterEnd());
        assertTrue(hull.at(0.4, 0.01).isEmpty());
        double cosine = Math.cos(Math.atan(0.75 / 1.2));
        assertEquals(-0.02 / cosine, hull.keel().z(6), 3e-5, "but for the bend of the last 13 mm, 0.025 mm");
    }

    /** Aft the table's end is a datum for the sheets, and is not given up. */
    @Test
    void badInput_knifeEdgeAft() {
        OffsetTable table = wigley(6, 12);
        assertEquals("the outside of the skin cannot be drawn at x = 12.000 m: at Keel the bottom is so steep that its outsides"
            + " meet only far below; give the half-siding of the keel",
            assertThrows(HullNotDrawn.class, () -> Hull.through(table)).getMessage());
    }

    private static OffsetTable wigley(double from, double to) {
        Forms forms = new Forms(0, Forms.even(from, to, 21)).keel(x -> 0)
                .named(LineKind.SHEER, "Sheer", x -> wigleyHalfBreadth(x, 0.75), x -> 0.75);
        for (int i = 1; i < 8; i++) {
            forms.waterline(0.75 * i / 8, OutsideTest::wigleyHalfBreadth);
        }
        return forms.inside(0.02).table();
    }

    private static double wigleyHalfBreadth(double x, double z) {
        double xi = x / 6 - 1;
        double zeta = 1 - z / 0.75;
        return 0.6 * (1 - xi * xi) * (1 - zeta * zeta);
    }
}
