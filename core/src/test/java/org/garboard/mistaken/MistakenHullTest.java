package org.garboard.mistaken;

import java.util.List;
import java.util.function.ToDoubleFunction;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.hull.SkinPoint;
import org.garboard.hydrostatics.Hydrostatics;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.lines.TapeInPlane;
import org.garboard.offsets.LineKind;
import org.garboard.siting.Boats;
import org.garboard.units.Angle;
import org.garboard.units.FeetInches;
import org.garboard.units.LengthNotation;
import org.garboard.units.LengthUnit;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Tables, surfaces, tapes and floating. A wedge in plan 8 m long, flat of bottom and wall-sided, has every figure in closed form. */
class MistakenHullTest {
    private static final double FOOT = 0.3048;
    private static final double[] STATIONS = {0, 1.5, 4, 6, 8};
    private static final double[] CHANGED = {0, 4, 1.5, 6, 8};
    private static final double[] FROM_AFT = {8, 6, 4, 1.5, 0};

    static List<Formula> afloat() {
        return List.of(
            Formula.of("volume", 6.4, 1e-8, () -> volume(wedge(STATIONS, 1, 1)))
                .slip("stations in feet", () -> volume(wedge(new double[] {0, 1.5 * FOOT, 4 * FOOT, 6 * FOOT, 8 * FOOT}, 1, 1)))
                .slip("two stations changed", () -> volume(wedge(CHANGED, 1, 1)))
                .slip("stations from aft", () -> volume(wedge(FROM_AFT, 1, 1)))
                .slip("half-breadths to port", () -> volume(wedge(STATIONS, -1, 1)))
                .slip("breadths for half-breadths", () -> volume(wedge(STATIONS, 2, 1)))
                .slip("half-breadths in feet", () -> volume(wedge(STATIONS, FOOT, 1)))
                .slip("heights downward", () -> volume(wedge(STATIONS, 1, -1)))
                .slip("draught above for below", () -> of(wedge(STATIONS, 1, 1), -0.5, 0, Hydrostatics::volume)),
            Formula.of("centre of buoyancy, aft of the bow", 16.0 / 3, 1e-8, () -> of(wedge(STATIONS, 1, 1), 0.5, 0, Hydrostatics::lcb))
                .slip("forward of the transom", () -> 8 - of(wedge(STATIONS, 1, 1), 0.5, 0, Hydrostatics::lcb))
                .slip("the wedge turned round", () -> of(turned(), 0.5, 0, Hydrostatics::lcb))
                .slip("of the waterplane's middle", () -> 4),
            Formula.of("centre of buoyancy, bow up by 2 deg", 16.0 / 3 + wedgeTrimmed(2), 1e-6, () -> of(wedge(STATIONS, 1, 1), 0.5, 2, Hydrostatics::lcb))
                .slip("bow down", () -> of(wedge(STATIONS, 1, 1), 0.5, -2, Hydrostatics::lcb))
                .slip("radians", () -> of(wedge(STATIONS, 1, 1), 0.5, Math.toRadians(2), Hydrostatics::lcb)),
            Formula.of("metacentre over the centre of buoyancy", 2048.0 / 375 / 6.4, 1e-6, () -> of(wedge(STATIONS, 1, 1), 0.5, 0, Hydrostatics::transverseBm))
                .slip("lengthwise", () -> of(wedge(STATIONS, 1, 1), 0.5, 0, Hydrostatics::longitudinalBm)),
            Formula.of("mass in the sea", 6.4 * 1025, 1e-5, () -> of(wedge(STATIONS, 1, 1), 0.5, 0, hull -> hull.mass(1025)))
                .slip("weight for mass", () -> 9.80665 * of(wedge(STATIONS, 1, 1), 0.5, 0, hull -> hull.mass(1025)))
                .slip("fresh water", () -> of(wedge(STATIONS, 1, 1), 0.5, 0, hull -> hull.mass(1000))),
            Formula.of("water over base, bow up", 0.5 + 3 * Math.tan(Math.toRadians(2)), 1e-12, () -> new WaterSurface(0.5, 4, Angle.ofDegrees(2)).at(7))
                .slip("bow down", () -> new WaterSurface(0.5, 4, Angle.ofDegrees(-2)).at(7))
                .slip("as far forward", () -> new WaterSurface(0.5, 4, Angle.ofDegrees(2)).at(1))
                .slip("about the bow", () -> new WaterSurface(0.5, 0, Angle.ofDegrees(2)).at(7)));
    }

    static List<Formula> surface() {
        double tan = Math.tan(Math.toRadians(20));
        return List.of(
            Formula.of("height of a V", 0.4 * tan, 1e-9, () -> Boats.prismaticV(20).height(3, -0.4))
                .slip("deadrise from plumb", () -> Boats.prismaticV(70).height(3, -0.4))
                .slip("breadth for half-breadth", () -> Boats.prismaticV(20).height(3, -0.8))
                .slip("below base", () -> -Boats.prismaticV(20).height(3, -0.4)),
            Formula.of("normal of a V, to port", -Math.sin(Math.toRadians(20)), 1e-9, () -> skin(3, -0.4).ny())
                .slip("on the other side", () -> skin(3, 0.4).ny())
                .slip("into the boat", () -> -skin(3, -0.4).ny()),
            Formula.of("deadrise on either side", 20, 1e-7, () -> skin(3, -0.4).deadrise().degrees())
                .slip("radians", () -> skin(3, -0.4).deadrise().radians())
                .slip("falling outboard", () -> -skin(3, -0.4).deadrise().degrees()),
            Formula.of("curvature of a cylinder", 1 / 1.2, 0.005 / 1.2, () -> Boats.cylinder(1.2).at(3, 0.3).orElseThrow().k1())
                .slip("hollow for round", () -> -Boats.cylinder(1.2).at(3, 0.3).orElseThrow().k1())
                .slip("along for across", () -> Boats.cylinder(1.2).at(3, 0.3).orElseThrow().k2())
                .slip("radius", () -> 1 / Boats.cylinder(1.2).at(3, 0.3).orElseThrow().k1()),
            Formula.of("girth from the keel", 0.4 / Math.cos(Math.toRadians(20)), 1e-9, () -> Boats.prismaticV(20).girth(3, 0.4))
                .slip("half-breadth", () -> 0.4)
                .slip("breadth for half-breadth", () -> Boats.prismaticV(20).girth(3, 0.8))
                .slip("deadrise from plumb", () -> Boats.prismaticV(70).girth(3, 0.4)),
            Formula.of("tape across the keel", 0.7 / Math.cos(Math.toRadians(20)), 1e-6, () -> TapeInPlane.athwart(Boats.prismaticV(20), 3, -0.3, 0.4).length())
                .slip("both to starboard", () -> TapeInPlane.athwart(Boats.prismaticV(20), 3, 0.3, 0.4).length())
                .slip("straight through", () -> TapeInPlane.athwart(Boats.prismaticV(20), 3, -0.3, 0.4).straight()));
    }

    /** 3 feet 4 5/8 inches are 1.031875 m. */
    static List<Formula> notation() {
        return List.of(
            Formula.of("3-4-5", 1.031875, 1e-9, () -> metres(LengthUnit.FOOT, "3-4-5"))
                .slip("tenths for eighths", () -> metres(LengthUnit.FOOT, "3.45"))
                .slip("the order from small to large", () -> metres(LengthUnit.FOOT, "5-4-3"))
                .slip("below base", () -> metres(LengthUnit.FOOT, "-3-4-5")),
            Formula.of("back to feet, inches, eighths", 1.031875, 1e-9, () -> metres(LengthUnit.FOOT, FeetInches.dashed(1.031875)))
                .slip("millimetres", () -> metres(LengthUnit.FOOT, FeetInches.dashed(1031.875)))
                .slip("feet", () -> metres(LengthUnit.FOOT, FeetInches.dashed(1.031875 / FOOT))),
            Formula.of("1250 mm", 1.25, 1e-12, () -> metres(LengthUnit.METRE, "1250 mm"))
                .slip("no unit", () -> metres(LengthUnit.METRE, "1250"))
                .slip("inches", () -> metres(LengthUnit.METRE, "1250 in"))
                .slip("a comma for thousands", () -> metres(LengthUnit.METRE, "1,25 mm")));
    }

    @ParameterizedTest
    @MethodSource({"afloat", "surface", "notation"})
    void law_aSlipIsSeen(Formula formula) {
        formula.seesThem();
    }

    /** Half-breadth x / 5, bottom at 0, sheer at 1. */
    private static Hull wedge(double[] stations, double breadth, double height) {
        return Hull.through(new Forms(0, stations).keel(x -> 0)
            .named(LineKind.CHINE, "Chine", x -> breadth * x / 5, x -> 0)
            .named(LineKind.SHEER, "Sheer", x -> breadth * x / 5, x -> height).table());
    }

    private static Hull turned() {
        return Hull.through(new Forms(0, STATIONS).keel(x -> 0)
            .named(LineKind.CHINE, "Chine", x -> (8 - x) / 5, x -> 0)
            .named(LineKind.SHEER, "Sheer", x -> (8 - x) / 5, x -> 1).table());
    }

    private static double volume(Hull hull) {
        return of(hull, 0.5, 0, Hydrostatics::volume);
    }

    /** Trimmed about the middle of the length; nothing known where she is clear of the water or swamped. */
    private static double of(Hull hull, double height, double trim, ToDoubleFunction<Hydrostatics> figure) {
        return Hydrostatics.of(hull, new WaterSurface(height, 4, Angle.ofDegrees(trim))) instanceof Hydrostatics afloat
            ? figure.applyAsDouble(afloat) : Double.NaN;
    }

    /** By how much the centre moves: depth h + s (x - 4), breadth 2 x / 5; integrals of x^n to 8. */
    private static double wedgeTrimmed(double degrees) {
        double s = Math.tan(Math.toRadians(degrees));
        double h = 0.5 - 4 * s;
        double volume = h * 64 / 2 + s * 512 / 3;
        double moment = h * 512.0 / 3 + s * 4096 / 4;
        return moment / volume - 16.0 / 3;
    }

    private static SkinPoint skin(double x, double y) {
        return Boats.prismaticV(20).at(x, y).orElseThrow();
    }

    private static double metres(LengthUnit unit, String text) {
        return LengthNotation.in(unit).read(text).length().map(length -> length.metres()).orElse(Double.NaN);
    }
}
