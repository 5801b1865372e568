package org.garboard.hydrostatics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;
import org.garboard.geometry.GaussRule;
import org.garboard.hull.Curve;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.hull.HullCurves;
import org.garboard.hull.SteppedForms;
import org.garboard.offsets.EndPoint;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.StemLine;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A wedge: upright sides y = s + a (x - x_s(z)) over a flat bottom, closed on a stem x_s(z) forward of the first
 * station, cut off square aft.
 */
class StemAfloatTest {
    private static final double SPREAD = 0.2;
    private static final double FOOT = -0.3;
    private static final double END = 8;
    private static final double SHEER_Z = 1.5;

    private static EndPoint keel() {
        return new EndPoint("Keel", LineKind.KEEL, 0, FOOT);
    }

    private static Forms wedgeForm(double rake, double siding) {
        Forms form = new Forms(0, 0, 1, 2, 4, 6, END).keel(x -> 0);
        if (siding > 0) {
            form = form.halfSiding(x -> siding);
        }
        return form.named(LineKind.CHINE, "Chine", x -> siding + SPREAD * (x - FOOT), x -> 0)
            .named(LineKind.SHEER, "Sheer", x -> siding + SPREAD * (x - FOOT + rake * SHEER_Z), x -> SHEER_Z);
    }

    private static Hull wedge(double rake, double siding) {
        return Hull.through(SteppedForms.with(wedgeForm(rake, siding).table(), new StemLine(List.of(keel(),
            new EndPoint("Sheer", LineKind.SHEER, 0, FOOT - rake * SHEER_Z)), siding)));
    }

    private static void assertExact(double expected, double actual, String what) {
        assertEquals(expected, actual, 1e-9 * Math.max(1, Math.abs(expected)), what);
    }

    private static Hydrostatics afloat(Hull hull, WaterSurface water) {
        return assertInstanceOf(Hydrostatics.class, Hydrostatics.of(hull, water));
    }

    private static Curve first(List<Curve> curves) {
        return curves.stream().min((one, other) -> Double.compare(start(one), start(other))).orElseThrow();
    }

    private static double start(Curve curve) {
        return curve.points().get(0).getX();
    }

    @ParameterizedTest
    @CsvSource({"0.3, 0", "0.3, 0.04", "-0.1, 0", "0, 0.03"})
    void exact_skinEndsOnTheStem(double rake, double siding) {
        Hull hull = wedge(rake, siding);
        assertEquals(Math.min(FOOT, FOOT - rake * SHEER_Z), hull.forwardEnd(), 1e-12);
        assertEquals(0, hull.firstSection());
        assertEquals(FOOT, start(new HullCurves(hull).line(hull.keel(), 1e-4).get(0)), 1e-12);
        for (double z = 0.1; z < 1.4; z += 0.2) {
            double end = FOOT - rake * z;
            Curve line = first(new HullCurves(hull).waterline(z, 1e-4));
            assertEquals(end, start(line), 1e-9);
            assertEquals(siding, line.points().get(0).getY(), 1e-9);
            for (double x = end + 0.013; x < 0.5; x += 0.05) {
                assertEquals(siding + SPREAD * (x - end), hull.halfBreadth(x, z).orElseThrow(), 1e-9);
            }
        }
        double before = FOOT - 0.01;
        assertEquals(rake > 0, hull.at(before, siding + 0.001).isPresent());
        assertTrue(hull.at(hull.forwardEnd() - 1e-6, siding).isEmpty());
    }

    @Test
    void exact_placesForwardOfTheFootLieAboveTheStem() {
        Hull hull = wedge(0.3, 0);
        double x = FOOT - 0.15;
        assertEquals(0.5, hull.height(x, 0), 1e-5);
        assertEquals(0.5 + 0.02 / SPREAD / 0.3, hull.height(x, -0.02), 1e-9);
        assertEquals(-hull.at(x, 0.02).orElseThrow().ny(), hull.at(x, -0.02).orElseThrow().ny(), 0);
        assertEquals(0.02 * Math.hypot(1, 1 / SPREAD / 0.3), hull.girth(x, 0.02), 1e-9);
        assertEquals(0.5, new HullCurves(hull).section(x, 1e-4).get(0).points().get(0).getZ(), 1e-9);
        assertEquals(FOOT + 0.05 / SPREAD - 0.3 * SHEER_Z, start(first(new HullCurves(hull).buttock(0.05, 1e-4))), 1e-9);
    }

    /** Waterlines are trapezoids; each figure is a polynomial in z. */
    @ParameterizedTest
    @CsvSource({"0.5, 0.3, 0", "1.0, 0.3, 0.04", "0.7, -0.1, 0", "0.7, -0.1, 0.02"})
    void exact_wedgeUpright(double h, double rake, double siding) {
        Hydrostatics upright = afloat(wedge(rake, siding), WaterSurface.level(h));
        DoubleUnaryOperator length = z -> END - FOOT + rake * z;
        double half = integral(0, h, z -> siding * length.applyAsDouble(z) + SPREAD * Math.pow(length.applyAsDouble(z), 2) / 2);
        assertExact(2 * half, upright.volume(), "volume");
        double moment = integral(0, h, z -> {
            double l = length.applyAsDouble(z);
            return siding * l * (END - l / 2) + SPREAD * l * l / 2 * (END - l / 3);
        });
        assertExact(moment / half, upright.lcb(), "LCB");
        double l = length.applyAsDouble(h);
        assertExact(2 * siding * l + SPREAD * l * l, upright.waterplane().area(), "waterplane");
        assertExact(2.0 / 3 * integral(0, l, s -> Math.pow(siding + SPREAD * s, 3)), upright.waterplane().transverse(), "IT");
        double side = Math.sqrt(1 + SPREAD * SPREAD + SPREAD * SPREAD * rake * rake);
        double bottom = siding * (END - FOOT) + SPREAD * Math.pow(END - FOOT, 2) / 2;
        assertExact(2 * bottom + 2 * side * integral(0, h, length), upright.wettedSkin(), "skin");
        assertExact(2 * siding * h * Math.hypot(1, rake), WetEnds.of(wedge(rake, siding), upright.water()).forward(), "stem");
        assertExact(Math.min(FOOT, FOOT - rake * h), upright.from(), "from");
    }

    @ParameterizedTest
    @CsvSource({"0.5, 3, 2, 0.3, 0", "0.6, 4, -1.5, 0.3, 0.04", "0.7, 4, 3, -0.1, 0.02"})
    void exact_wedgeTrimmed(double height, double about, double trim, double rake, double siding) {
        WaterSurface water = new WaterSurface(height, about, Angle.ofDegrees(trim));
        Polygon profile = Polygon.rectangle(-3, END, 0, SHEER_Z).where((x, z) -> x - (FOOT - rake * z))
            .where((x, z) -> water.at(x) - z);
        Hydrostatics trimmed = afloat(wedge(rake, siding), water);
        double half = profile.integral((x, z) -> siding + SPREAD * (x - FOOT + rake * z));
        assertExact(2 * half, trimmed.volume(), "volume");
        assertExact(profile.integral((x, z) -> x * (siding + SPREAD * (x - FOOT + rake * z))) / half, trimmed.lcb(), "LCB");
        assertExact(profile.integral((x, z) -> z * (siding + SPREAD * (x - FOOT + rake * z))) / half, trimmed.vcb(), "VCB");
        double end = (FOOT - rake * water.at(0)) / (1 + rake * water.slope());
        double area = integral(end, END, x -> siding + SPREAD * (x - FOOT + rake * water.at(x)));
        assertExact(2 * area / Math.cos(water.trim().radians()), trimmed.waterplane().area(), "waterplane");
    }

    private static double integral(double from, double to, DoubleUnaryOperator of) {
        GaussRule rule = GaussRule.of(12);
        double sum = 0;
        for (int i = 0; i < rule.size(); i++) {
            sum += (to - from) * rule.weight(i) * of.applyAsDouble(from + (to - from) * rule.at(i));
        }
        return sum;
    }

    private static final double RADIUS = 3;

    /** An arc that leaves the foot plumb and curves forward. */
    private static double arc(double z) {
        return FOOT - RADIUS + Math.sqrt(RADIUS * RADIUS - z * z);
    }

    /**
     * Stations as those of a wedge with a straight stem, and a stem that is an arc: from the first station each waterline
     * leaves its own tangent by the cube of the distance, as much as brings it to the arc.
     */
    @Test
    void exact_stemThatIsAnArc() {
        double rake = 0.25;
        List<EndPoint> ends = new ArrayList<>(List.of(keel()));
        for (double z = 0.05; z < 1.46; z += 0.05) {
            ends.add(new EndPoint("WL", LineKind.WATERLINE, z, arc(z)));
        }
        ends.add(new EndPoint("Sheer", LineKind.SHEER, 0, arc(SHEER_Z)));
        Hull hull = Hull.through(SteppedForms.with(wedgeForm(rake, 0).table(), new StemLine(ends, 0)));
        double h = 1.2;
        for (double z = 0.03; z < SHEER_Z; z += 0.1) {
            Curve line = first(new HullCurves(hull).waterline(z, 1e-5));
            assertEquals(arc(z), start(line), 2e-5);
            assertEquals(0, line.points().get(0).getY(), 1e-6);
            for (double x = arc(z) + 0.01; x < 0; x += 0.05) {
                assertEquals(arcWedge(x, z, rake), hull.halfBreadth(x, z).orElseThrow(), 1e-5);
            }
        }
        Hydrostatics upright = afloat(hull, WaterSurface.level(h));
        double half = integral(0, h, z -> integral(arc(z), 0, x -> arcWedge(x, z, rake))
            + integral(0, END, x -> SPREAD * (x - FOOT + rake * z)));
        assertEquals(2 * half, upright.volume(), 1e-5);
        assertEquals(2 * (integral(arc(h), 0, x -> arcWedge(x, h, rake)) + integral(0, END, x -> SPREAD * (x - FOOT + rake * h))),
            upright.waterplane().area(), 1e-5);
        assertEquals(arc(h), upright.from(), 1e-5);
    }

    private static double arcWedge(double x, double z, double rake) {
        double straight = SPREAD * (x - FOOT + rake * z);
        double miss = SPREAD * (arc(z) - FOOT + rake * z);
        return straight - miss * Math.pow(x / arc(z), 3);
    }

    private static final double HALF_LENGTH = 5;
    private static final double HALF_BEAM = 0.5;
    private static final double DRAUGHT = 0.6;
    private static final double LEAN = 0.4;

    /** The Wigley form y = b (1 - (x/l)^2) (1 - (z/T)^2), every waterline pushed forward by a share of its height above the keel. */
    private static double wigley(double x, double z) {
        double xi = (x + LEAN * (z + DRAUGHT)) / HALF_LENGTH;
        return HALF_BEAM * (1 - xi * xi) * (1 - z * z / (DRAUGHT * DRAUGHT));
    }

    /** Its fore part: what leans keeps its waterplanes, and so its volume (Cavalieri). */
    @Test
    void exact_wigleyWithARakedStem() {
        double first = -HALF_LENGTH + 0.25;
        Forms form = new Forms(0, first, -4.4, -4, -3.3, -2.5, -1.5, -0.5, 0).keel(x -> -DRAUGHT)
            .named(LineKind.SHEER, "Sheer", x -> wigley(x, 0), x -> 0);
        for (double z = -0.55; z < -0.01; z += 0.05) {
            form = form.waterline(z, StemAfloatTest::wigley);
        }
        Hull hull = Hull.through(SteppedForms.with(form.table(), new StemLine(List.of(
            new EndPoint("Keel", LineKind.KEEL, 0, -HALF_LENGTH),
            new EndPoint("Sheer", LineKind.SHEER, 0, -HALF_LENGTH - LEAN * DRAUGHT)), 0)));
        for (double z = -0.5; z < 0; z += 0.1) {
            double end = -HALF_LENGTH - LEAN * (z + DRAUGHT);
            assertEquals(end, start(first(new HullCurves(hull).waterline(z, 1e-5))), 1e-5);
            for (double x = end + 0.02; x < -3; x += 0.1) {
                // the lines across which the loft runs on are not level, so it is not the form's own parabola between stations
                assertEquals(wigley(x, z), hull.halfBreadth(x, z).orElseThrow(), 1e-4);
            }
        }
        double h = -0.15;
        Hydrostatics upright = afloat(hull, WaterSurface.level(h));
        double half = integral(-DRAUGHT, h, z -> integral(-HALF_LENGTH - LEAN * (z + DRAUGHT), 0, x -> wigley(x, z)));
        assertEquals(2 * half, upright.volume(), 1e-5);
        assertEquals(2 * integral(-HALF_LENGTH - LEAN * (h + DRAUGHT), 0, x -> wigley(x, h)), upright.waterplane().area(), 2e-5);
    }
}
