package org.garboard.hydrostatics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.function.DoubleUnaryOperator;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.offsets.LineKind;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Hulls whose every figure is a short sum, upright and trimmed. */
class ClosedFormsAfloatTest {
    private static final double LENGTH = 8;
    /** Tangent of the prism's deadrise: from (0, 0) to the chine (1, 0.2). */
    private static final double RISE = 0.2;

    /** A V bottom of one section throughout: keel (0, 0), chine (1, 0.2), sheer (1.1, 1.2). */
    private static Hull prism() {
        return Hull.through(new Forms(0, 0, 1.5, 4, 6, LENGTH).keel(x -> 0)
            .named(LineKind.CHINE, "Chine", x -> 1, x -> RISE)
            .named(LineKind.SHEER, "Sheer", x -> 1.1, x -> 1.2).table());
    }

    /** Flat of bottom, wall-sided, a wedge in plan: half-breadth x/5. */
    private static Hull wedge() {
        return Hull.through(new Forms(0, 0, 1.5, 4, 6, LENGTH).keel(x -> 0)
            .named(LineKind.CHINE, "Chine", x -> x / 5, x -> 0)
            .named(LineKind.SHEER, "Sheer", x -> x / 5, x -> 1).table());
    }

    private static Hydrostatics afloat(Hull hull, WaterSurface water) {
        return assertInstanceOf(Hydrostatics.class, Hydrostatics.of(hull, water));
    }

    private static void assertExact(double expected, double actual, String what) {
        assertEquals(expected, actual, 1e-9 * Math.max(1, Math.abs(expected)), what);
    }

    @Test
    void exact_prismUpright() {
        double h = 0.15;
        Hydrostatics upright = afloat(prism(), WaterSurface.level(h));
        double b = h / RISE;
        assertExact(h * b * LENGTH, upright.volume(), "volume");
        assertExact(1.025 * 1000 * h * b * LENGTH, upright.mass(1025), "mass");
        assertExact(LENGTH / 2, upright.lcb(), "LCB");
        assertExact(2 * h / 3, upright.vcb(), "VCB");
        assertExact(2 * Math.hypot(h, b) * LENGTH, upright.wettedSkin(), "skin");
        assertExact(h * b, WetEnds.of(prism(), upright.water()).forward(), "forward end");
        assertExact(h * b, WetEnds.of(prism(), upright.water()).after(), "after end");
        assertExact(2 * b * LENGTH, upright.waterplane().area(), "waterplane");
        assertExact(LENGTH / 2, upright.waterplane().lcf(), "LCF");
        assertExact(LENGTH * Math.pow(2 * b, 3) / 12, upright.waterplane().transverse(), "IT");
        assertExact(2 * b * Math.pow(LENGTH, 3) / 12, upright.waterplane().longitudinal(), "IL");
        assertExact(LENGTH * Math.pow(2 * b, 3) / 12 / upright.volume(), upright.transverseBm(), "BM");
        assertExact(0, upright.from(), "wet from");
        assertExact(LENGTH, upright.to(), "wet to");
    }

    /** Above the chine: trapezes on the triangle. */
    @Test
    void exact_prismAboveItsChine() {
        double h = 0.7;
        Hydrostatics upright = afloat(prism(), WaterSurface.level(h));
        double top = 1 + 0.1 * (h - RISE);
        double side = (1 + top) * (h - RISE);
        double area = RISE + side;
        double level = RISE + (h - RISE) / 3 * (2 * top + 1) / (top + 1);
        assertExact(area * LENGTH, upright.volume(), "volume");
        assertExact((RISE * 2 * RISE / 3 + side * level) / area, upright.vcb(), "VCB");
        assertExact(2 * LENGTH * (Math.hypot(1, RISE) + Math.hypot(top - 1, h - RISE)), upright.wettedSkin(), "skin");
        assertExact(2 * top * LENGTH, upright.waterplane().area(), "waterplane");
    }

    /**
     * Water that cuts only the V, at every place h(x) deep there: sums of powers of h. With the bow out of the
     * water it begins where h is nought.
     */
    @ParameterizedTest
    @CsvSource({"0.1, 4, 0.5", "0.1, 4, -0.6", "0.05, 8, 1", "0.02, 3, 1.2", "0.03, 2, -1.5"})
    void exact_prismTrimmed(double height, double about, double trim) {
        WaterSurface water = new WaterSurface(height, about, Angle.ofDegrees(trim));
        double slope = Math.tan(Math.toRadians(trim));
        double out = about - height / slope;
        double from = slope > 0 ? Math.max(0, out) : 0;
        double to = slope > 0 ? LENGTH : Math.min(LENGTH, out);
        DoubleUnaryOperator h = x -> height + (x - about) * slope;
        double h1 = power(h, from, to, slope, 1);
        double h2 = power(h, from, to, slope, 2);
        double h3 = power(h, from, to, slope, 3);
        double stretch = 1 / Math.cos(Math.toRadians(trim));
        Hydrostatics trimmed = afloat(prism(), water);
        assertExact(h2 / RISE, trimmed.volume(), "volume");
        assertExact(about + (h3 / h2 - height) / slope, trimmed.lcb(), "LCB");
        assertExact(2.0 / 3 * h3 / h2, trimmed.vcb(), "VCB");
        assertExact(2 * h1 * Math.hypot(1, 1 / RISE), trimmed.wettedSkin(), "skin");
        assertExact(2 * h1 / RISE * stretch, trimmed.waterplane().area(), "waterplane");
        double lcf = about + (h2 / h1 - height) / slope;
        assertExact(lcf, trimmed.waterplane().lcf(), "LCF");
        assertExact(2.0 / 3 * h3 / Math.pow(RISE, 3) * stretch, trimmed.waterplane().transverse(), "IT");
        double hAtLcf = h2 / h1;
        double square = (h3 - 2 * hAtLcf * h2 + hAtLcf * hAtLcf * h1) / (slope * slope);
        assertExact(2 / RISE * square * Math.pow(stretch, 3), trimmed.waterplane().longitudinal(), "IL");
        assertExact(from, trimmed.from(), "wet from");
        assertExact(to, trimmed.to(), "wet to");
        assertExact(Math.pow(Math.max(0, h.applyAsDouble(LENGTH)), 2) / RISE, WetEnds.of(prism(), trimmed.water()).after(), "after end");
    }

    /** Integral of h^n over x, for an h of constant slope. */
    private static double power(DoubleUnaryOperator h, double from, double to, double slope, int n) {
        return (Math.pow(h.applyAsDouble(to), n + 1) - Math.pow(h.applyAsDouble(from), n + 1)) / ((n + 1) * slope);
    }

    /** A flat keel of half-siding 0.2, then up to the chine at (1, 0.2): beside a strip two triangles. */
    @Test
    void exact_flatKeel() {
        Hull hull = Hull.through(new Forms(0, 0, 1.5, 4, 6, LENGTH).keel(x -> 0).halfSiding(x -> 0.2)
            .named(LineKind.CHINE, "Chine", x -> 1, x -> 0.2)
            .named(LineKind.SHEER, "Sheer", x -> 1.1, x -> 1.2).table());
        double h = 0.1;
        Hydrostatics upright = afloat(hull, WaterSurface.level(h));
        assertExact(2 * LENGTH * (0.2 * h + 0.5 * h * 0.4), upright.volume(), "volume");
        assertExact(2 * LENGTH * (0.2 + Math.hypot(0.4, h)), upright.wettedSkin(), "skin");
        assertExact(2 * 0.6 * LENGTH, upright.waterplane().area(), "waterplane");
    }

    /**
     * A reverse chine: up to (1, 0.2), down to (1.1, 0.15), up to the sheer. Water at 0.18 cuts the bottom at 0.9, the
     * chine flat at 1.04 and the side: a strip of air runs along under each side.
     */
    @Test
    void exact_reverseChineWithAirUnderIt() {
        Hull hull = Hull.through(new Forms(0, 0, 1.5, 4, 6, LENGTH).keel(x -> 0)
            .named(LineKind.CHINE, "Chine", x -> 1, x -> 0.2)
            .named(LineKind.CHINE, "Chine flat", x -> 1.1, x -> 0.15)
            .named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 1.2).table());
        double side = 1.1 + 0.1 * 0.03 / 1.05;
        Hydrostatics upright = afloat(hull, WaterSurface.level(0.18));
        double middle = 0.5 * 0.9 * 0.18;
        double pocket = 0.5 * (side - 1.04) * 0.03;
        assertExact(2 * LENGTH * (middle + pocket), upright.volume(), "volume");
        assertExact((middle * 0.12 + pocket * 0.17) / (middle + pocket), upright.vcb(), "VCB");
        assertExact(2 * LENGTH * (Math.hypot(0.9, 0.18) + Math.hypot(0.06, 0.03) + Math.hypot(side - 1.1, 0.03)),
            upright.wettedSkin(), "skin");
        assertExact(2 * LENGTH * (0.9 + side - 1.04), upright.waterplane().area(), "waterplane");
        assertExact(2.0 / 3 * LENGTH * (Math.pow(0.9, 3) + Math.pow(side, 3) - Math.pow(1.04, 3)),
            upright.waterplane().transverse(), "IT");
    }

    @Test
    void exact_wedgeUpright() {
        double h = 0.4;
        double beam = 2 * LENGTH / 5;
        Hydrostatics upright = afloat(wedge(), WaterSurface.level(h));
        assertExact(beam * LENGTH / 2 * h, upright.volume(), "volume");
        assertExact(LENGTH * 2 / 3, upright.lcb(), "LCB");
        assertExact(h / 2, upright.vcb(), "VCB");
        assertExact(beam * LENGTH / 2 + 2 * h * Math.hypot(LENGTH, beam / 2), upright.wettedSkin(), "skin");
        assertExact(beam * h, WetEnds.of(wedge(), upright.water()).after(), "after end");
        assertExact(0, WetEnds.of(wedge(), upright.water()).forward(), "forward end");
        assertExact(LENGTH * 2 / 3, upright.waterplane().lcf(), "LCF");
        assertExact(LENGTH * Math.pow(beam, 3) / 48, upright.waterplane().transverse(), "IT");
        assertExact(beam * Math.pow(LENGTH, 3) / 36, upright.waterplane().longitudinal(), "IL");
    }

    /** Bow down by a trim that leaves water all along: sums of x^n (h0 + s x). */
    @ParameterizedTest
    @CsvSource({"0.5, 2, -3", "0.5, 2, 3"})
    void exact_wedgeTrimmed(double height, double about, double trim) {
        double s = Math.tan(Math.toRadians(trim));
        double h0 = height - about * s;
        double l = LENGTH;
        Hydrostatics trimmed = afloat(wedge(), new WaterSurface(height, about, Angle.ofDegrees(trim)));
        double first = h0 * l * l / 2 + s * Math.pow(l, 3) / 3;
        double second = h0 * Math.pow(l, 3) / 3 + s * Math.pow(l, 4) / 4;
        double square = h0 * h0 * l * l / 2 + 2 * h0 * s * Math.pow(l, 3) / 3 + s * s * Math.pow(l, 4) / 4;
        assertExact(0.4 * first, trimmed.volume(), "volume");
        assertExact(second / first, trimmed.lcb(), "LCB");
        assertExact(square / 2 / first, trimmed.vcb(), "VCB");
        double stretch = 1 / Math.cos(Math.toRadians(trim));
        double beam = 2 * l / 5;
        assertExact(beam * l / 2 * stretch, trimmed.waterplane().area(), "waterplane");
        assertExact(l * 2 / 3, trimmed.waterplane().lcf(), "LCF");
        assertExact(beam * Math.pow(l * stretch, 3) / 36, trimmed.waterplane().longitudinal(), "IL");
    }

    /** A wedge turned end for end and trimmed the other way floats alike. */
    @Test
    void law_turnedEndForEnd() {
        Hull turned = Hull.through(new Forms(0, 0, 1.5, 4, 6, LENGTH).keel(x -> 0)
            .named(LineKind.CHINE, "Chine", x -> (LENGTH - x) / 5, x -> 0)
            .named(LineKind.SHEER, "Sheer", x -> (LENGTH - x) / 5, x -> 1).table());
        Hydrostatics one = afloat(wedge(), new WaterSurface(0.3, 3, Angle.ofDegrees(2)));
        Hydrostatics other = afloat(turned, new WaterSurface(0.3, LENGTH - 3, Angle.ofDegrees(-2)));
        assertExact(one.volume(), other.volume(), "volume");
        assertExact(one.lcb(), LENGTH - other.lcb(), "LCB");
        assertExact(one.vcb(), other.vcb(), "VCB");
        assertExact(one.wettedSkin(), other.wettedSkin(), "skin");
        assertExact(one.waterplane().longitudinal(), other.waterplane().longitudinal(), "IL");
        assertExact(WetEnds.of(wedge(), one.water()).after(), WetEnds.of(turned, other.water()).forward(), "ends");
    }

    @Test
    void law_moreWaterMoreBoat() {
        double before = 0;
        for (double z = 0.01; z < 1.2; z += 0.03) {
            double volume = afloat(prism(), WaterSurface.level(z)).volume();
            assertEquals(true, volume > before);
            before = volume;
        }
    }

    @Test
    void exact_clearOfWater() {
        assertEquals(new Floating.ClearOfWater(0.25), Hydrostatics.of(prism(), WaterSurface.level(-0.25)));
        assertInstanceOf(Floating.ClearOfWater.class, Hydrostatics.of(prism(), WaterSurface.level(0)));
    }

    /** Bow down 10 degrees about the middle the water stands 0.7 + 4 tan 10 above base at the bow, sheer 1.2. */
    @Test
    void exact_swamped() {
        Floating.Swamped over = assertInstanceOf(Floating.Swamped.class,
            Hydrostatics.of(prism(), new WaterSurface(0.7, 4, Angle.ofDegrees(-10))));
        assertExact(0, over.x(), "place");
        assertExact(0.7 + 4 * Math.tan(Math.toRadians(10)) - 1.2, over.depth(), "depth");
        assertInstanceOf(Hydrostatics.class, Hydrostatics.of(prism(), WaterSurface.level(1.2)));
        assertInstanceOf(Floating.Swamped.class, Hydrostatics.of(prism(), WaterSurface.level(1.201)));
    }

    /** The V on a box keel: bottom at -0.4, half-siding 0.15, top at 0 where the V begins; chine (1.15, 0.2). */
    private static Hull boxKeel() {
        return Hull.through(new Forms(0, 0, 1.5, 4, 6, LENGTH).keel(x -> -0.4)
            .halfSiding(x -> 0.15)
            .named(LineKind.KEEL_TOP, "Top of keel", x -> 0.15, x -> 0)
            .named(LineKind.CHINE, "Chine", x -> 1.15, x -> RISE)
            .named(LineKind.SHEER, "Sheer", x -> 1.25, x -> 1.2).table());
    }

    @Test
    void exact_boxKeelUpright() {
        double h = 0.15;
        Hydrostatics upright = afloat(boxKeel(), WaterSurface.level(h));
        double b = h / RISE;
        double box = 0.3 * 0.4;
        double slab = 0.3 * h;
        double area = box + slab + h * b;
        assertExact(area * LENGTH, upright.volume(), "volume");
        assertExact((box * -0.2 + slab * h / 2 + h * b * 2 * h / 3) / area, upright.vcb(), "VCB");
        assertExact(2 * LENGTH * (0.15 + 0.4 + Math.hypot(h, b)), upright.wettedSkin(), "skin");
        assertExact(2 * (0.15 + b) * LENGTH, upright.waterplane().area(), "waterplane");
        assertExact(LENGTH * Math.pow(2 * (0.15 + b), 3) / 12, upright.waterplane().transverse(), "IT");
    }

    /** Water only on the box, 0.05 to 0.35 m deep over the length: a wedge of 0.3 m breadth. */
    @Test
    void exact_boxKeelTrimmed() {
        double slope = 0.3 / LENGTH;
        WaterSurface water = new WaterSurface(-0.4 + 0.2, LENGTH / 2, Angle.ofRadians(Math.atan(slope)));
        Hydrostatics trimmed = afloat(boxKeel(), water);
        double sum = 0.2 * LENGTH;
        double squares = LENGTH * (0.04 + 0.3 * 0.3 / 12);
        assertExact(0.3 * sum, trimmed.volume(), "volume");
        assertExact(LENGTH / 2 + slope * Math.pow(LENGTH, 3) / 12 / sum, trimmed.lcb(), "LCB");
        assertExact(-0.4 + squares / 2 / sum, trimmed.vcb(), "VCB");
        assertExact(0.3 * LENGTH + 2 * sum, trimmed.wettedSkin(), "skin");
        assertExact(0.3 * LENGTH / Math.cos(Math.atan(slope)), trimmed.waterplane().area(), "waterplane");
    }
}
