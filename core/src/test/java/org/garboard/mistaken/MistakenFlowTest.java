package org.garboard.mistaken;

import java.util.List;
import org.garboard.flow.cavitation.Ellipsoid;
import org.garboard.flow.cavitation.Inception;
import org.garboard.flow.layer.FrictionLine;
import org.garboard.flow.layer.LayerLaw;
import org.garboard.flow.planing.Loading;
import org.garboard.flow.planing.Prism;
import org.garboard.flow.planing.PrismBalance;
import org.garboard.flow.planing.PrismRun;
import org.garboard.flow.planing.Stream;
import org.garboard.flow.steps.StepWake;
import org.garboard.flow.water.SoundSpeed;
import org.garboard.flow.water.Water;
import org.garboard.units.Angle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Water, planing, layer, steps and boiling. The right values stand with their sources in the tests of those packages. */
class MistakenFlowTest {
    private static final double KNOT = 1852 / 3600.0;
    private static final double FOOT = 0.3048;
    private static final Water SEA = Water.sea(15);

    static List<Formula> formulas() {
        return List.of(
            Formula.of("density", 1023.34306, 1e-5, () -> new Water(25, 35).density())
                .slip("Fahrenheit", () -> new Water(77, 35).density())
                .slip("salinity as a share", () -> new Water(25, 0.035).density())
                .slip("the two changed", () -> new Water(35, 25).density())
                .slip("the sign", () -> new Water(-25, 35).density()),
            Formula.of("viscosity", 1.1386e-6, 1e-3 * 1.1386e-6, () -> Water.fresh(15).viscosity())
                .slip("Fahrenheit", () -> Water.fresh(59).viscosity())
                .slip("sea for fresh", () -> SEA.viscosity())
                .slip("dynamic for kinematic", () -> Water.fresh(15).dynamicViscosity()),
            Formula.of("vapour pressure", 1705.1, 0.001 * 1705.1, () -> Water.fresh(15).vapourPressure())
                .slip("Fahrenheit", () -> Water.fresh(59).vapourPressure())
                .slip("sea for fresh", () -> SEA.vapourPressure()),
            Formula.of("speed of sound", 1550.744, 5e-4, () -> SoundSpeed.mackenzie(25, 35, 1000))
                .slip("depth in feet", () -> SoundSpeed.mackenzie(25, 35, 1000 / FOOT))
                .slip("depth upward", () -> SoundSpeed.mackenzie(25, 35, -1000))
                .slip("Fahrenheit", () -> SoundSpeed.mackenzie(77, 35, 1000))
                .slip("salinity as a share", () -> SoundSpeed.mackenzie(25, 0.035, 1000)),
            Formula.of("speed of sound under pressure", 1731.995, 5e-4, () -> SoundSpeed.chenMillero(40, 40, 1000))
                .slip("pascals for bars", () -> SoundSpeed.chenMillero(40, 40, 1000e5))
                .slip("metres of water for bars", () -> SoundSpeed.chenMillero(40, 40, 1000 / 10.05))
                .slip("the sign", () -> SoundSpeed.chenMillero(40, 40, -1000)),
            Formula.of("friction", .00177, .000005, () -> FrictionLine.SCHOENHERR.mean(3.22e8))
                .slip("feet for metres in one of its lengths", () -> FrictionLine.SCHOENHERR.mean(3.22e8 * FOOT))
                .slip("knots", () -> FrictionLine.SCHOENHERR.mean(3.22e8 / KNOT)),
            Formula.of("thickness of the layer, quick", 0.016 / 8, 2e-6, () -> quick(0.125 * 1, speedAt(1e7, 0.125)))
                .slip("knots", () -> quick(0.125, speedAt(1e7, 0.125) / KNOT))
                .slip("run in feet", () -> quick(0.125 / FOOT, speedAt(1e7, 0.125)))
                .slip("run ahead for aft", () -> quick(-0.125, speedAt(1e7, 0.125)))
                .slip("going astern", () -> quick(0.125, -speedAt(1e7, 0.125))),
            Formula.of("thickness of the layer, full", .015266, 5e-6, () -> full(1, speedAt(1e7, 1)))
                .slip("knots", () -> full(1, speedAt(1e7, 1) / KNOT))
                .slip("run in feet", () -> full(1 / FOOT, speedAt(1e7, 1)))
                .slip("run in millimetres", () -> full(1000, speedAt(1e7, 1)))
                .slip("run ahead for aft", () -> full(-1, speedAt(1e7, 1))),
            Formula.of("where a step's hollow ends, on the centreline", .8532, 6e-5, () -> meets(4, 4, 10, 2, .04, StepWake.Place.CENTRELINE))
                .slip("off the centreline", () -> meets(4, 4, 10, 2, .04, StepWake.Place.QUARTER_BEAM))
                .slip("trim and deadrise changed", () -> meets(4, 10, 4, 2, .04, StepWake.Place.CENTRELINE))
                .slip("trim in radians", () -> meets(4, Math.toRadians(4), 10, 2, .04, StepWake.Place.CENTRELINE))
                .slip("bow down", () -> meets(4, -4, 10, 2, .04, StepWake.Place.CENTRELINE))
                .slip("height in feet", () -> meets(4, 4, 10, 2, .04 / FOOT, StepWake.Place.CENTRELINE)),
            Formula.of("cavitation number", 2.0406, 5e-5, () -> new Inception(SEA, 0.5).number(10))
                .slip("depth as z, downward", () -> new Inception(SEA, -0.5).number(10))
                .slip("depth in feet", () -> new Inception(SEA, 0.5 / FOOT).number(10))
                .slip("knots", () -> new Inception(SEA, 0.5).number(10 / KNOT)),
            Formula.of("speed at which a yawed half ellipsoid boils", 77.5 * KNOT, 0.06 * KNOT, () -> boils(4, 1, 0.5, 10))
                .slip("width and height changed", () -> boils(4, 0.5, 1, 10))
                .slip("nose across", () -> boils(1, 4, 0.5, 10))
                .slip("yaw in radians", () -> boils(4, 1, 0.5, Math.toRadians(10)))
                .slip("the stream from the side", () -> boils(4, 1, 0.5, 90 - 10)),
            Formula.of("speed coefficient", 3.18, 0.005, () -> new Prism(14, Angle.ofDegrees(10)).speedCoefficient(stream(67.5)))
                .slip("beam in metres, all else in feet", () -> new Prism(14 * FOOT, Angle.ofDegrees(10)).speedCoefficient(stream(67.5)))
                .slip("knots", () -> new Prism(14, Angle.ofDegrees(10)).speedCoefficient(stream(40)))
                .slip("half the beam", () -> new Prism(7, Angle.ofDegrees(10)).speedCoefficient(stream(67.5))));
    }

    /** D. Savitsky, Marine Technology 1(1), 1964, Table 1 by an independent computation with one density, 1.9905 slug/ft3: 2.2145 deg. */
    static List<Formula> balances() {
        return List.of(
            Formula.of("trim of the balance", 2.2145, 5e-4, () -> trim(67.5, 60_000, 29, 2, 0.5, 4))
                .slip("knots", () -> trim(40, 60_000, 29, 2, 0.5, 4))
                .slip("mass for weight", () -> trim(67.5, 60_000 / 32.2, 29, 2, 0.5, 4))
                .slip("centre of gravity in metres", () -> trim(67.5, 60_000, 29 * FOOT, 2, 0.5, 4))
                .slip("centre of gravity aft of the transom", () -> trim(67.5, 60_000, -29, 2, 0.5, 4))
                .slip("centre of gravity below the keel", () -> trim(67.5, 60_000, 29, -2, 0.5, 4))
                .slip("thrust above the centre of gravity", () -> trim(67.5, 60_000, 29, 2, -0.5, 4)),
            Formula.of("moment left at a trim, of the shaft alone", shaftAlone(10), 1e-9 * 60_000, () -> moment(10) - moment(0))
                .slip("shaft that presses down", () -> moment(-10) - moment(0))
                .slip("shaft in radians", () -> moment(Math.toRadians(10)) - moment(0)),
            Formula.of("wetted keel at a trim", 55.84, 0.005, () -> lying(2.3, 3.29).wettedKeel())
                .slip("chine for keel", () -> lying(2.3, 3.29).wettedChine())
                .slip("trim in radians", () -> lying(Math.toRadians(2.3), 3.29).wettedKeel())
                .slip("length for beams", () -> lying(2.3, 3.29 * 14).wettedKeel()),
            Formula.of("draught of the transom", 2.241, 0.0005, () -> lying(2.3, 3.29).draught())
                .slip("bow down", () -> lying(-2.3, 3.29).draught()),
            Formula.of("stagnation line a quarter of the way to the chine, to port", 55.84 - (55.84 - 36.28) / 4, 0.005, () -> lying(2.3, 3.29).stagnationAt(-1.75))
                .slip("from the chine for from the keel", () -> lying(2.3, 3.29).stagnationAt(7 - 1.75))
                .slip("shares of the whole beam for the half", () -> lying(2.3, 3.29).stagnationAt(-3.5))
                .slip("ahead for aft of the keel's end", () -> 2 * lying(2.3, 3.29).wettedKeel() - lying(2.3, 3.29).stagnationAt(-1.75)));
    }

    @ParameterizedTest
    @MethodSource({"formulas", "balances"})
    void law_aSlipIsSeen(Formula formula) {
        formula.seesThem();
    }

    private static double speedAt(double reynolds, double run) {
        return reynolds * SEA.viscosity() / run;
    }

    private static double quick(double run, double speed) {
        return LayerLaw.quick(run, speed, SEA) instanceof LayerLaw.Known known ? known.layer().thickness() : Double.NaN;
    }

    private static double full(double run, double speed) {
        return LayerLaw.USUAL.after(run, speed, SEA) instanceof LayerLaw.Known known ? known.layer().thickness() : Double.NaN;
    }

    private static double meets(double speed, double trim, double deadrise, double wetted, double step, StepWake.Place place) {
        return new StepWake(speed, trim, deadrise, wetted).meets(place, step, 0) instanceof StepWake.After after ? after.beams() : Double.NaN;
    }

    private static double boils(double a, double b, double c, double yaw) {
        double turn = Math.toRadians(yaw);
        return new Inception(SEA, 0.5).speed(new Ellipsoid(a, b, c).leastPressure(Math.cos(turn), Math.sin(turn), 0));
    }

    private static Stream stream(double speed) {
        return new Stream(speed, 1.9905, 1.00e-5, 32.2);
    }

    private static double trim(double speed, double weight, double lcg, double vcg, double arm, double shaft) {
        return PrismBalance.of(new Prism(14, Angle.ofDegrees(10)), stream(speed), new Loading(weight, lcg, vcg, arm, Angle.ofDegrees(shaft)))
            .trim().degrees();
    }

    private static PrismRun inclined(double shaft) {
        return PrismBalance.of(new Prism(14, Angle.ofDegrees(10)), stream(67.5), new Loading(60_000, 29, 2, 0.5, Angle.ofDegrees(shaft))).at(Angle.ofDegrees(4));
    }

    private static double moment(double shaft) {
        return inclined(shaft).moment();
    }

    /** Equation (35): weight times c over cos tau times sin tau (sin tau - sin(tau + epsilon)); a shaft that lifts takes load off the bottom. */
    private static double shaftAlone(double shaft) {
        double tau = Math.toRadians(4);
        double c = 29 - inclined(0).pressureCentre();
        return 60_000 * c / Math.cos(tau) * Math.sin(tau) * (Math.sin(tau) - Math.sin(tau + Math.toRadians(shaft)));
    }

    private static PrismRun lying(double trim, double beams) {
        return PrismBalance.lifting(new Prism(14, Angle.ofDegrees(10)), stream(67.5), Angle.ofDegrees(trim), beams);
    }
}
