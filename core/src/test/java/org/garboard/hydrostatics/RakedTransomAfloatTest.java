package org.garboard.hydrostatics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import org.garboard.hull.Curve;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.hull.HullCurves;
import org.garboard.hull.SteppedForms;
import org.garboard.offsets.EndPoint;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.TransomLine;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A wedge: V sides y = 4 z of one section throughout, cut off by a transom x = 8 + m z - k y^2. */
class RakedTransomAfloatTest {
    private static final double RISE = 0.25;
    private static final double FOOT = 8;
    private static final double SHEER_Z = 1.5;
    private static final double SHEER_Y = 1.2;

    private static Hull wedge(double slope, double round) {
        return Hull.through(SteppedForms.with(new Forms(0, 0, 2, 4, 6, FOOT).keel(x -> 0)
                .named(LineKind.CHINE, "Chine", x -> 1, x -> RISE)
                .named(LineKind.SHEER, "Sheer", x -> SHEER_Y, x -> SHEER_Z).table(),
            new TransomLine(List.of(new EndPoint("Keel", LineKind.KEEL, 0, FOOT),
                new EndPoint("Sheer", LineKind.SHEER, 0, FOOT + slope * SHEER_Z - round)), round)));
    }

    private static void assertExact(double expected, double actual, String what) {
        assertEquals(expected, actual, 1e-9 * Math.max(1, Math.abs(expected)), what);
    }

    private static Hydrostatics afloat(Hull hull, WaterSurface water) {
        return assertInstanceOf(Hydrostatics.class, Hydrostatics.of(hull, water));
    }

    @Test
    void exact_skinEndsAtTheTransom() {
        Hull hull = wedge(0.3, 0);
        assertEquals(FOOT + 0.3 * SHEER_Z, hull.afterEnd(), 1e-12);
        double[] point = new double[10];
        for (double y = 0.05; y < 1; y += 0.1) {
            double end = FOOT + 0.3 * RISE * y;
            assertEquals(RISE * y, hull.height(end - 1e-9, y), 1e-12);
            assertEquals(Double.NaN, hull.height(end + 1e-9, y));
            assertEquals(false, hull.evaluate(end + 1e-9, -y, point, 0));
        }
        assertEquals(FOOT, last(new HullCurves(hull).line(hull.keel(), 1e-4).get(0)), 1e-12);
        assertEquals(FOOT + 0.3 * RISE / 2, last(new HullCurves(hull).waterline(RISE / 2, 1e-4).get(0)), 1e-9);
        double cut = 0.06 / 0.3;
        assertEquals(cut, new HullCurves(hull).section(FOOT + 0.06, 1e-4).get(0).points().get(0).getZ(), 1e-9);
    }

    private static double last(Curve curve) {
        return curve.points().get(curve.points().size() - 1).getX();
    }

    @ParameterizedTest
    @CsvSource({"0.2, 0.3", "0.15, -0.25", "0.2, 0"})
    void exact_rakedUpright(double h, double m) {
        Hydrostatics upright = afloat(wedge(m, 0), WaterSurface.level(h));
        double half = FOOT * h * h / (2 * RISE) + m * h * h * h / (3 * RISE);
        assertExact(2 * half, upright.volume(), "volume");
        double moment = (FOOT * FOOT * h * h / 2 + 2 * FOOT * m * Math.pow(h, 3) / 3 + m * m * Math.pow(h, 4) / 4) / (2 * RISE);
        assertExact(moment / half, upright.lcb(), "LCB");
        double b = h / RISE;
        assertExact(2 * Math.hypot(1, RISE) * (FOOT * b + m * RISE * b * b / 2), upright.wettedSkin(), "skin");
        assertExact(h * b * Math.hypot(1, m), WetEnds.of(wedge(m, 0), upright.water()).after(), "transom");
        assertExact(2 * b * (FOOT + m * h), upright.waterplane().area(), "waterplane");
        assertExact(2.0 / 3 * Math.pow(b, 3) * (FOOT + m * h), upright.waterplane().transverse(), "IT");
    }

    /** Depths are linear over the profile, and the half-breadth is four times the height. */
    @ParameterizedTest
    @CsvSource({"0.12, 5, 0.6, 0.3", "0.15, 4, -0.8, 0.3", "0.12, 5, 0.6, -0.25", "0.06, 3, 1.2, 0.4"})
    void exact_rakedTrimmed(double height, double about, double trim, double m) {
        WaterSurface water = new WaterSurface(height, about, Angle.ofDegrees(trim));
        Polygon profile = Polygon.rectangle(0, 2 * FOOT, 0, RISE).where((x, z) -> FOOT + m * z - x)
            .where((x, z) -> water.at(x) - z);
        double half = profile.integral((x, z) -> z / RISE);
        Hydrostatics trimmed = afloat(wedge(m, 0), water);
        assertExact(2 * half, trimmed.volume(), "volume");
        assertExact(profile.integral((x, z) -> x * z / RISE) / half, trimmed.lcb(), "LCB");
        assertExact(profile.integral((x, z) -> z * z / RISE) / half, trimmed.vcb(), "VCB");
        Polygon plan = Polygon.rectangle(0, 2 * FOOT, 0, 1).where((x, y) -> FOOT + m * RISE * y - x)
            .where((x, y) -> water.at(x) - RISE * y);
        assertExact(2 * Math.hypot(1, RISE) * plan.integral((x, y) -> 1), trimmed.wettedSkin(), "skin");
        double edge = (FOOT + m * water.at(0)) / (1 - m * water.slope());
        double from = Math.max(0, water.slope() > 0 ? about - height / water.slope() : 0);
        double to = water.slope() < 0 ? Math.min(edge, about - height / water.slope()) : edge;
        double half2 = (to - from) * (water.at(from) + water.at(to)) / 2 / RISE;
        assertExact(2 * half2 / Math.cos(water.trim().radians()), trimmed.waterplane().area(), "waterplane");
    }

    @ParameterizedTest
    @CsvSource({"0.2, 0.3, 0.1", "0.18, 0.2, 0.06"})
    void exact_rakedAndRound(double h, double m, double round) {
        double k = round / (SHEER_Y * SHEER_Y);
        Hydrostatics upright = afloat(wedge(m, round), WaterSurface.level(h));
        double b = h / RISE;
        double half = FOOT * h * h / (2 * RISE) + m * h * h * h / (3 * RISE) - k * Math.pow(h, 4) / (12 * Math.pow(RISE, 3));
        assertExact(2 * half, upright.volume(), "volume");
        assertExact(2 * (b * (FOOT + m * h) - k * b * b * b / 3), upright.waterplane().area(), "waterplane");
        assertExact(2 * Math.hypot(1, RISE) * (FOOT * b + m * RISE * b * b / 2 - k * b * b * b / 3), upright.wettedSkin(), "skin");
        double transverse = (FOOT + m * h) * b * b * b / 3 - k * Math.pow(b, 5) / 5;
        assertExact(2 * transverse, upright.waterplane().transverse(), "IT");
    }
}
