package org.garboard.mistaken;

import java.util.List;
import org.garboard.acoustics.beam.BeamTilt;
import org.garboard.acoustics.beam.Disc;
import org.garboard.acoustics.beam.EchoLoss;
import org.garboard.acoustics.beam.Element.Plane;
import org.garboard.acoustics.beam.Rectangle;
import org.garboard.acoustics.beam.Spacing;
import org.garboard.acoustics.laminate.ElasticPlate;
import org.garboard.acoustics.laminate.Fluid;
import org.garboard.acoustics.laminate.InHullLoss;
import org.garboard.acoustics.laminate.NormalPlate;
import org.garboard.acoustics.laminate.Solid;
import org.garboard.acoustics.laminate.TypicalSolids;
import org.garboard.units.Angle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Beams, where they look, and what a skin lets through. The right values stand with their sources in the tests of those packages. */
class MistakenBeamTest {
    private static final Angle NONE = Angle.ofDegrees(0);
    private static final Fluid SEA = new Fluid(1026, 1507);
    private static final Solid GRP = TypicalSolids.GLASS_POLYESTER.lossless();

    static List<Formula> formulas() {
        return List.of(
            Formula.of("tilt of a leaning element", 8, 1e-9, () -> tilt(20, 0, 12, 0).outboard().degrees())
                .slip("turned round", () -> tilt(20, 0, -12, 0).outboard().degrees())
                .slip("on the other side", () -> tilt(-20, 0, 12, 0).outboard().degrees())
                .slip("towards the keel for outboard", () -> -tilt(20, 0, 12, 0).outboard().degrees())
                .slip("fore and aft for athwartships", () -> tilt(0, 20, 12, 0).outboard().degrees())
                .slip("radians", () -> tilt(Math.toRadians(20), 0, Math.toRadians(12), 0).outboard().degrees()),
            Formula.of("tilt of a beam under way", -1, 1e-9, () -> tilt(0, 3, 0, 4).aft().degrees())
                .slip("bow down", () -> tilt(0, 3, 0, -4).aft().degrees())
                .slip("a bottom that falls aft", () -> tilt(0, -3, 0, 4).aft().degrees())
                .slip("the two changed", () -> tilt(0, 4, 0, 3).aft().degrees()),
            Formula.of("width of a disc's beam [deg]", 2 * Math.toDegrees(Math.asin(1.61634 * 0.03 / (Math.PI * 0.075))), 5e-4,
                () -> new Disc(0.075, 0.03).halfPowerWidth(Plane.ATHWART).orElseThrow().degrees())
                .slip("radius for diameter", () -> new Disc(0.0375, 0.03).halfPowerWidth(Plane.ATHWART).orElseThrow().degrees())
                .slip("millimetres", () -> new Disc(75, 0.03).halfPowerWidth(Plane.ATHWART).orElseThrow().degrees())
                .slip("half the width for the whole", () -> new Disc(0.075, 0.03).halfPowerWidth(Plane.ATHWART).orElseThrow().degrees() / 2)
                .slip("kilohertz for the wavelength", () -> new Disc(0.075, 50).halfPowerWidth(Plane.ATHWART).map(Angle::degrees).orElse(Double.NaN)),
            Formula.of("length of a rectangle of 8 by 24 deg", 1.39156 / (Math.PI * Math.sin(Math.toRadians(4))) * 0.0075, 5e-7,
                () -> rectangle(8, 24).length())
                .slip("the two widths changed", () -> rectangle(24, 8).length())
                .slip("half widths for whole ones", () -> rectangle(4, 12).length())
                .slip("radians", () -> rectangle(Math.toRadians(8), Math.toRadians(24)).length()),
            Formula.of("answer of a rectangle 4 deg ahead [share of the pressure]", Math.sqrt(0.5), 1e-9,
                () -> rectangle(8, 24).response(Angle.ofDegrees(4), NONE))
                .slip("athwartships for fore and aft", () -> rectangle(8, 24).response(NONE, Angle.ofDegrees(4)))
                .slip("radians", () -> rectangle(8, 24).response(Angle.ofDegrees(Math.toRadians(4)), NONE)),
            Formula.of("echo lost by tilt [dB]", .948, 5.001e-4, () -> new Disc(6, 1).echoLoss(NONE, Angle.ofDegrees(2)))
                .slip("one way for both", () -> new Disc(6, 1).echoLoss(NONE, Angle.ofDegrees(2)) / 2)
                .slip("radius for diameter", () -> new Disc(3, 1).echoLoss(NONE, Angle.ofDegrees(2)))
                .slip("radians", () -> new Disc(6, 1).echoLoss(NONE, Angle.ofDegrees(Math.toRadians(2)))),
            Formula.of("echo lost, off the table [dB]", .948, 1e-3,
                () -> EchoLoss.of(new Disc(6, 1)).at(0, Math.sin(Math.toRadians(2)), -Math.cos(Math.toRadians(2))))
                .slip("degrees for a direction", () -> EchoLoss.of(new Disc(6, 1)).at(0, 2, -1)),
            Formula.of("near field [m]", .147, 5.001e-4, () -> new Disc(0.075, 1.5 / 50).nearField())
                .slip("hertz for kilohertz", () -> new Disc(0.075, 1.5 / 50_000).nearField())
                .slip("millimetres", () -> new Disc(75, 1.5 / 50).nearField()),
            Formula.of("room beside a body that hangs lower [m]", 0.4, 1e-9,
                () -> Spacing.between(new Disc(0.075, 0.03), Angle.ofDegrees(30), Angle.ofDegrees(15), 0.4).least())
                .slip("a beam that leans away", () -> Spacing.between(new Disc(0.075, 0.03), Angle.ofDegrees(30), Angle.ofDegrees(-15), 0.4).least())
                .slip("the other hangs higher", () -> Spacing.between(new Disc(0.075, 0.03), Angle.ofDegrees(30), Angle.ofDegrees(15), -0.4).least())
                .slip("whole angle for half", () -> Spacing.between(new Disc(0.075, 0.03), Angle.ofDegrees(60), Angle.ofDegrees(15), 0.4).least()),
            Formula.of("share through a plate, squarely", .4518, 5e-5, () -> NormalPlate.transmission(SEA, GRP, SEA, 0.010, 50e3))
                .slip("kilohertz", () -> NormalPlate.transmission(SEA, GRP, SEA, 0.010, 50))
                .slip("millimetres", () -> NormalPlate.transmission(SEA, GRP, SEA, 10, 50e3))
                .slip("inches for millimetres", () -> NormalPlate.transmission(SEA, GRP, SEA, 0.254, 50e3)),
            Formula.of("loss through a plate at 30 deg [dB]", 20.74, 5.001e-3, () -> plate(0.006, 200e3, 30))
                .slip("radians", () -> plate(0.006, 200e3, Math.toRadians(30)))
                .slip("kilohertz", () -> plate(0.006, 200, 30))
                .slip("gain for loss", () -> -plate(0.006, 200e3, 30))
                .slip("the skin's deadrise from plumb", () -> plate(0.006, 200e3, 60)),
            Formula.of("worst loss in a band, both ways [dB]", 2 * 20 * Math.log10((ratio() + 1 / ratio()) / 2), 1e-9,
                () -> InHullLoss.through(GRP, 0.010, SEA, NONE, 200e3).get(0).worstTwoWay())
                .slip("one way", () -> InHullLoss.through(GRP, 0.010, SEA, NONE, 200e3).get(0).worst())
                .slip("as told, not the worst", () -> 2 * InHullLoss.through(GRP, 0.010, SEA, NONE, 200e3).get(0).asTold())
                .slip("kilohertz", () -> InHullLoss.through(GRP, 0.010, SEA, NONE, 200).get(0).worstTwoWay()));
    }

    @ParameterizedTest
    @MethodSource("formulas")
    void law_aSlipIsSeen(Formula formula) {
        formula.seesThem();
    }

    private static BeamTilt tilt(double deadrise, double slope, double inclination, double trim) {
        return BeamTilt.of(Angle.ofDegrees(deadrise), Angle.ofDegrees(slope), Angle.ofDegrees(inclination), Angle.ofDegrees(trim));
    }

    private static Rectangle rectangle(double foreAndAft, double athwart) {
        return Rectangle.ofHalfPowerWidths(Angle.ofDegrees(foreAndAft), Angle.ofDegrees(athwart), 0.0075);
    }

    private static double plate(double thickness, double frequency, double degrees) {
        return new ElasticPlate(GRP, thickness).passage(SEA, SEA, frequency, Angle.ofDegrees(degrees)).lossDecibels();
    }

    private static double ratio() {
        return GRP.impedance() / SEA.impedance();
    }
}
