package org.garboard.flow.attitude;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.garboard.flow.planing.PlaningRange;
import org.garboard.flow.planing.Porpoising;
import org.garboard.flow.planing.Prism;
import org.garboard.flow.planing.PrismBalance;
import org.garboard.flow.planing.PrismRun;
import org.garboard.flow.planing.Stream;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.offsets.LineKind;
import org.garboard.units.Angle;
import org.hipparchus.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Brings the prism and a real bottom to agreement: beam and chord deadrise are averaged, and the keel's chord taken,
 * over the mean wetted length forward of the after end of the bottom (the paper's inputs are labelled average), until
 * they stand still; the load is turned with that chord; then the level water, at the prism's draught of the keel there,
 * is laid on the true surface.
 */
public final class PlaningHull {
    /**
     * The wetted lengths of keel and of chine, of the prism and of the true bottom, may each differ by this part of the
     * prism's wetted keel, the length over which it carries her: our choice. Both set where the bottom is wet, and a mean
     * can agree while one is long and the other short; a forefoot that rises takes some of the keel on every boat, and
     * carries little, but past a sixth it is another bottom that runs.
     */
    private static final double UNLIKE = 1 / 6.0;
    /** Trims of the keel between which one is looked for [deg]. */
    private static final double LEAST = 2;
    private static final double MOST = 14.999;
    private static final int TURNS = 100;

    private final Hull hull;
    private final MeanPrism mean;
    private final double end;

    public PlaningHull(Hull hull) {
        this(hull, hull.bottomEnd());
    }

    /** As if the bottom ended at a place: a step [m]. */
    PlaningHull(Hull hull, double end) {
        this.hull = hull;
        this.end = end;
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
        return settled(stream, load, (balance, rise) -> balance.at(balance.trim()), hull.bottomEdge().y(end) * 2);
    }

    /** The same, looked for first near a run at another speed. */
    public Planing balancedNear(Stream stream, Load load, PrismRun near) {
        return settled(stream, load, (balance, rise) -> balance.at(balance.trimNear(near.trim())), near.beams() * near.prism().beam());
    }

    /** At a trim of the base line that is told, the load carried. */
    public Planing trimmed(Stream stream, Load load, Angle trim) {
        return settled(stream, load, (balance, rise) -> balance.at(Angle.ofRadians(Math.max(1e-3, trim.radians() + rise))),
            hull.bottomEdge().y(end) * 2);
    }

    /** With a wetted length of the keel from its after end, along it [m], that was measured: at the trim that carries the load so. */
    public Planing withWettedKeel(Stream stream, Load load, double wettedKeel) {
        Optional<String> fault = faultOf(wettedKeel);
        if (fault.isPresent()) {
            return new Planing.NotKnown(fault.get());
        }
        double rise = mean.rise(wettedKeel);
        double low = excess(stream, load, wettedKeel, LEAST - Math.toDegrees(rise));
        double high = excess(stream, load, wettedKeel, MOST - Math.toDegrees(rise));
        if (!(low < 0 && high > 0)) {
            return new Planing.NotKnown(String.format(Locale.ROOT, "a wetted keel of %.2f m: at no trim of the keel from 2 to 15 deg does the "
                + "planing method carry the load so", wettedKeel));
        }
        double trim = new BracketingNthOrderBrentSolver(1e-9, 5).solve(TURNS, each -> excess(stream, load, wettedKeel, each),
            LEAST - Math.toDegrees(rise), MOST - Math.toDegrees(rise));
        return measured(stream, load, Angle.ofDegrees(trim), wettedKeel);
    }

    /** At a trim of the base line and a wetted keel [m] that were both measured, whatever the method lifts so. */
    public Planing measured(Stream stream, Load load, Angle trim, double wettedKeel) {
        Optional<String> unfit = unfit(hull).or(() -> faultOf(wettedKeel));
        if (unfit.isPresent()) {
            return new Planing.NotKnown(unfit.get());
        }
        WaterSurface water = waterAt(trim, wettedKeel);
        Optional<StagnationLine> line = new LaidLine(hull, water).line(end);
        if (line.isEmpty()) {
            return new Planing.NotKnown("at the measured trim and wetted keel the water does not leave the chine within the hull");
        }
        double length = meanLength(line.get());
        Prism prism = mean.over(length);
        Angle rise = Angle.ofRadians(mean.rise(length));
        PrismBalance balance = PrismBalance.of(prism, stream, load.alongKeel(hull, end, rise));
        PrismRun run = balance.measured(Angle.ofRadians(trim.radians() + rise.radians()), length / prism.beam());
        Optional<String> outside = PlaningRange.outside(run);
        return outside.<Planing>map(Planing.NotKnown::new).orElseGet(() -> new Planing.Running(trim, run, line.get(), water, doubts(run, load)));
    }

    private Optional<String> faultOf(double wettedKeel) {
        double most = end - hull.firstSection();
        return wettedKeel > 0 && wettedKeel < most ? Optional.empty() : Optional.of(String.format(Locale.ROOT,
            "a wetted keel of %.2f m: it must be more than 0 and less than the bottom's %.2f m", wettedKeel, most));
    }

    /** By how much the bottom is wet over more than the load needs [m]; most where the chine is wet to the bow, less than nothing where it is dry. */
    private double excess(Stream stream, Load load, double wettedKeel, double trim) {
        Optional<StagnationLine> line = new LaidLine(hull, waterAt(Angle.ofDegrees(trim), wettedKeel)).line(end);
        if (line.isEmpty()) {
            return -end;
        }
        double length = meanLength(line.get());
        Prism prism = mean.over(length);
        Angle rise = Angle.ofRadians(mean.rise(length));
        PrismRun run = PrismBalance.of(prism, stream, load.alongKeel(hull, end, rise)).at(Angle.ofDegrees(trim + rise.degrees()));
        return length - run.beams() * prism.beam();
    }

    private WaterSurface waterAt(Angle trim, double wettedKeel) {
        double x = end - wettedKeel * Math.cos(mean.rise(wettedKeel));
        return new WaterSurface(hull.keel().z(x), x, trim);
    }

    private double meanLength(StagnationLine line) {
        return end - 0.5 * (line.atKeel() + line.atChine());
    }

    /** Chooses a run of a prism whose keel's chord rises forward by an angle [rad]. */
    private interface Choice {
        PrismRun of(PrismBalance balance, double rise);
    }

    private Planing settled(Stream stream, Load load, Choice choice, double first) {
        Optional<String> unfit = unfit(hull);
        if (unfit.isPresent()) {
            return new Planing.NotKnown(unfit.get());
        }
        Agreement agreement = new Agreement(first);
        while (!agreement.isOver()) {
            double length = agreement.length();
            if (end - length < hull.firstSection()) {
                return new Planing.NotKnown("the bottom would be wet to the forward end of the table");
            }
            Prism prism = mean.over(length);
            Optional<String> outside = PlaningRange.outside(prism, stream);
            if (outside.isPresent()) {
                return new Planing.NotKnown(outside.get());
            }
            double rise = mean.rise(length);
            PrismRun run = choice.of(PrismBalance.of(prism, stream, load.alongKeel(hull, end, Angle.ofRadians(rise))), rise);
            if (agreement.with(run.beams() * prism.beam() * Math.cos(rise))) {
                return laid(run, length, rise, load);
            }
        }
        return new Planing.NotKnown("no mean wetted length was found with which beam and deadrise agree");
    }

    private Planing laid(PrismRun run, double length, double rise, Load load) {
        Optional<String> outside = PlaningRange.outside(run);
        if (outside.isPresent()) {
            return new Planing.NotKnown(outside.get());
        }
        double trim = run.trim().radians() - rise;
        WaterSurface water = new WaterSurface(hull.keel().z(end) + run.draught() / Math.cos(trim), end, Angle.ofRadians(trim));
        Optional<StagnationLine> line = new LaidLine(hull, water).line(end);
        if (line.isEmpty()) {
            return new Planing.NotKnown("the water does not leave keel and chine within the hull");
        }
        Optional<String> unlike = unlike("keel", run.wettedKeel(), end - line.get().atKeel(), run)
            .or(() -> unlike("chine", run.wettedChine(), end - line.get().atChine(), run));
        return unlike.<Planing>map(Planing.NotKnown::new)
            .orElseGet(() -> new Planing.Running(Angle.ofRadians(trim), run, line.get(), water, doubts(run, load)));
    }

    private static Optional<String> unlike(String which, double prism, double real, PrismRun run) {
        return Math.abs(prism - real) <= UNLIKE * run.wettedKeel() ? Optional.empty() : Optional.of(String.format(Locale.ROOT,
            "the bottom is too unlike a prism: its %s is wet over %.2f m, the prism's over %.2f m; they may differ by a sixth of the prism's keel, %.2f m",
            which, real, prism, UNLIKE * run.wettedKeel()));
    }

    private static List<String> doubts(PrismRun run, Load load) {
        List<String> doubts = new ArrayList<>();
        PlaningRange.doubt(run).ifPresent(doubts::add);
        Porpoising.note(run, load.weight()).ifPresent(doubts::add);
        return doubts;
    }
}
