package org.garboard.flow.attitude;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.DoubleFunction;
import org.garboard.flow.planing.Loading;
import org.garboard.flow.planing.PlaningRange;
import org.garboard.flow.planing.Porpoising;
import org.garboard.flow.planing.Prism;
import org.garboard.flow.planing.PrismBalance;
import org.garboard.flow.planing.PrismRun;
import org.garboard.flow.planing.Stream;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.offsets.LineKind;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Brings the prism and a real bottom to agreement: beam and chord deadrise are averaged, and the keel's chord taken,
 * over the mean wetted length forward of the after end of the bottom (the paper's inputs are labelled average), until
 * they stand still; the load is turned with that chord; then level water is laid on the true surface, so high that it
 * is wet over the same mean length, by which alone the method knows how much of a bottom carries. Beside a box keel the V counts
 * from the keel's top.
 */
public final class PlaningHull {
    /**
     * The wetted area of the true bottom may have its centre so far from the prism's, in mean wetted lengths. A bow that rises
     * or narrows moves it aft, and the lift with it; a tenth is worth half a degree of trim in the paper's worked example
     * (Table 1: some 490,000 ft lb a degree between 2 and 3 degrees, 60,000 lb on a mean wetted length of 45 ft), a third
     * of the usual band of trim. Our choice.
     */
    private static final double UNLIKE = 0.1;
    /** Trims of the keel between which one is looked for [deg]. */
    private static final double LEAST = 2;
    private static final double MOST = 14.999;
    private static final int TURNS = 100;

    private final Hull hull;
    private final VBottom bottom;
    private final MeanPrism mean;
    private final double end;

    public PlaningHull(Hull hull) {
        this(hull, hull.bottomEnd());
    }

    /** As if the bottom ended at a place: a step [m]. */
    PlaningHull(Hull hull, double end) {
        this.hull = hull;
        this.end = end;
        this.bottom = new VBottom(hull);
        this.mean = new MeanPrism(hull, end);
    }

    /** Why the planing method is not for a bottom at all. */
    public static Optional<String> unfit(Hull hull) {
        if (hull.bottomEdge().kind() != LineKind.CHINE) {
            return Optional.of("no chine: the planing method is for bottoms that end at chines");
        }
        return hull.skinLine() != 0 ? Optional.of("a keel below the bottom, which the planing method does not cover") : Optional.empty();
    }

    /** At the trim that balances the load. */
    public Planing balanced(Stream stream, Load load) {
        return settled(stream, whole(load), (balance, rise) -> balance.at(balance.trim()), bottom.beam(end));
    }

    /** The same, looked for first near a run at another speed. */
    public Planing balancedNear(Stream stream, Load load, PrismRun near) {
        return settled(stream, whole(load), (balance, rise) -> balance.at(balance.trimNear(near.trim())), near.beams() * near.prism().beam());
    }

    /** At a trim of the base line that is told, the mass [kg] carried. */
    public Planing trimmed(Stream stream, double mass, Angle trim) {
        return settled(stream, rise -> Loading.ofWeight(mass * Water.GRAVITY),
            (balance, rise) -> balance.at(Angle.ofRadians(Math.max(1e-3, trim.radians() + rise))), bottom.beam(end));
    }

    /** With a wetted length of the keel from its after end, along it [m], that was measured: at the trim that carries the mass [kg] so. */
    public Planing withWettedKeel(Stream stream, double mass, double wettedKeel) {
        Optional<String> fault = unfit(hull).or(() -> faultOf(wettedKeel));
        if (fault.isPresent()) {
            return new Planing.NotKnown(fault.get());
        }
        double rise = mean.rise(wettedKeel);
        double low = excess(stream, mass, wettedKeel, LEAST - Math.toDegrees(rise));
        double high = excess(stream, mass, wettedKeel, MOST - Math.toDegrees(rise));
        if (!(low < 0 && high > 0)) {
            return new Planing.NotKnown(String.format(Locale.ROOT, "a wetted keel of %.2f m: at no trim of the keel from 2 to 15 deg does the "
                + "planing method carry %.0f kg so", wettedKeel, mass));
        }
        double trim = new BracketingNthOrderBrentSolver(1e-9, 5).solve(TURNS, each -> excess(stream, mass, wettedKeel, each),
            LEAST - Math.toDegrees(rise), MOST - Math.toDegrees(rise));
        return measured(stream, Angle.ofDegrees(trim), wettedKeel);
    }

    /** At a trim of the base line and a wetted keel [m] that were both measured, carrying what the method lifts so; with dry chines the line alone. */
    public Planing measured(Stream stream, Angle trim, double wettedKeel) {
        Optional<String> unfit = unfit(hull).or(() -> faultOf(wettedKeel));
        if (unfit.isPresent()) {
            return new Planing.NotKnown(unfit.get());
        }
        WaterSurface water = waterAt(trim, wettedKeel);
        LaidLine laid = new LaidLine(hull, water);
        Optional<StagnationLine> line = laid.line(end);
        if (line.isEmpty()) {
            return laid.insideChines(end).map(dry -> dry(stream, trim, wettedKeel, dry, water))
                .orElseGet(() -> new Planing.NotKnown("at the measured trim and wetted keel the water does not cross the keel within the hull"));
        }
        double length = WettedPlan.of(line.get(), end).mean();
        Prism prism = mean.over(length);
        Angle keelTrim = Angle.ofRadians(trim.radians() + mean.rise(length));
        Optional<String> never = PlaningRange.outside(prism, stream).or(() -> PlaningRange.outside(keelTrim));
        if (never.isPresent()) {
            return new Planing.NotKnown(never.get());
        }
        PrismRun run = PrismBalance.lifting(prism, stream, keelTrim, length / prism.beam());
        Optional<String> outside = PlaningRange.outside(run);
        return outside.<Planing>map(Planing.NotKnown::new).orElseGet(() -> new Planing.Running(trim, run, line.get(), water, doubts(run)));
    }

    /** The line of (3), which the paper has for every trim and deadrise above a speed coefficient of 2; of lift and drag nothing. */
    private Planing dry(Stream stream, Angle trim, double wettedKeel, StagnationLine line, WaterSurface water) {
        Prism prism = mean.over(wettedKeel);
        Optional<String> slow = PlaningRange.outside(prism, stream).or(() -> PlaningRange.tooSlowForDryChines(prism, stream));
        return slow.<Planing>map(Planing.NotKnown::new)
            .orElseGet(() -> new Planing.ChinesDry(trim, prism, Angle.ofRadians(trim.radians() + mean.rise(wettedKeel)), line, water));
    }

    private Optional<String> faultOf(double wettedKeel) {
        double most = end - hull.firstSection();
        return wettedKeel > 0 && wettedKeel < most ? Optional.empty() : Optional.of(String.format(Locale.ROOT,
            "a wetted keel of %.2f m: it must be more than 0 and less than the bottom's %.2f m", wettedKeel, most));
    }

    /** By how much the bottom is wet over more than the mass needs [m]; most where the chine is wet to the bow, less than nothing where it is dry. */
    private double excess(Stream stream, double mass, double wettedKeel, double trim) {
        Optional<StagnationLine> line = new LaidLine(hull, waterAt(Angle.ofDegrees(trim), wettedKeel)).line(end);
        if (line.isEmpty()) {
            return -end;
        }
        double length = WettedPlan.of(line.get(), end).mean();
        Prism prism = mean.over(length);
        PrismRun run = PrismBalance.of(prism, stream, Loading.ofWeight(mass * Water.GRAVITY)).at(Angle.ofDegrees(trim + Math.toDegrees(mean.rise(length))));
        return length - run.beams() * prism.beam();
    }

    private WaterSurface waterAt(Angle trim, double wettedKeel) {
        double x = end - wettedKeel * Math.cos(mean.rise(wettedKeel));
        return new WaterSurface(hull.keel().z(x), x, trim);
    }

    /** Chooses a run of a prism whose keel's chord rises forward by an angle [rad]. */
    private interface Choice {
        PrismRun of(PrismBalance balance, double rise);
    }

    private DoubleFunction<Loading> whole(Load load) {
        return rise -> load.alongKeel(hull, end, bottom.keel(end), Angle.ofRadians(rise));
    }

    private Planing settled(Stream stream, DoubleFunction<Loading> load, Choice choice, double first) {
        Optional<String> unfit = unfit(hull);
        if (unfit.isPresent()) {
            return new Planing.NotKnown(unfit.get());
        }
        double most = end - hull.firstSection();
        boolean wasMost = false;
        Agreement agreement = new Agreement(first);
        while (!agreement.isOver()) {
            double length = Math.min(most, agreement.length());
            Prism prism = mean.over(length);
            Optional<String> outside = PlaningRange.outside(prism, stream);
            if (outside.isPresent()) {
                return new Planing.NotKnown(outside.get());
            }
            double rise = mean.rise(length);
            PrismRun run = choice.of(PrismBalance.of(prism, stream, load.apply(rise)), rise);
            double given = run.beams() * prism.beam() * Math.cos(rise);
            if (given >= most && wasMost) {
                return new Planing.NotKnown("the bottom would be wet to the forward end of the table");
            }
            wasMost = length == most;
            if (agreement.with(Math.min(most, given))) {
                return laid(run, length, rise);
            }
        }
        return new Planing.NotKnown("no mean wetted length was found with which beam and deadrise agree");
    }

    private Planing laid(PrismRun run, double length, double rise) {
        Optional<String> outside = PlaningRange.outside(run);
        if (outside.isPresent()) {
            return new Planing.NotKnown(outside.get());
        }
        Angle trim = Angle.ofRadians(run.trim().radians() - rise);
        Optional<CarryingWater.Laid> laid = new CarryingWater(hull, end, bottom.keel(end)).wetting(length, trim, Math.tan(run.trim().radians()), run.draught() / Math.cos(trim.radians()));
        if (laid.isEmpty()) {
            return new Planing.NotKnown("at no height does the water leave keel and chine within the hull and wet the bottom over the "
                + FixedDecimal.format(length, 2) + " m that carry her");
        }
        return unlike(laid.get().plan(), WettedPlan.straight(run.wettedKeel(), run.wettedChine())).<Planing>map(Planing.NotKnown::new)
            .orElseGet(() -> new Planing.Running(trim, run, laid.get().line(), laid.get().water(), doubts(run)));
    }

    private static Optional<String> unlike(WettedPlan real, WettedPlan prism) {
        return Math.abs(real.centre() - prism.centre()) <= UNLIKE * prism.mean() ? Optional.empty() : Optional.of(String.format(Locale.ROOT,
            "the bottom is too unlike a prism: the middle of its wetted area lies %.2f m ahead of its end, the prism's %.2f m; they may differ by a tenth "
            + "of the mean wetted length, %.2f m", real.centre(), prism.centre(), UNLIKE * prism.mean()));
    }

    private static List<String> doubts(PrismRun run) {
        List<String> doubts = new ArrayList<>();
        PlaningRange.doubt(run).ifPresent(doubts::add);
        Porpoising.note(run).ifPresent(doubts::add);
        return doubts;
    }
}
