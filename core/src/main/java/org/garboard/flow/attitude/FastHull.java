package org.garboard.flow.attitude;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.flow.attitude.Attitude.NotKnown;
import org.garboard.flow.attitude.Attitude.ChinesDry;
import org.garboard.flow.attitude.Attitude.Planes;
import org.garboard.flow.attitude.Attitude.Stepped;
import org.garboard.flow.attitude.Attitude.Wetted;
import org.garboard.flow.planing.PrismRun;
import org.garboard.flow.planing.Stream;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.flow.steps.StepsUnderWay;
import org.garboard.flow.steps.SteppedBottom;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.units.Angle;

/** How a hull lies above displacement speeds: on one planing surface, or on several between steps. */
final class FastHull {
    /** Speed coefficient on the beam aft at which the planing method begins. */
    private static final double LEAST_PLANING = 1;
    private static final String NO_WEIGHTS = "the boat's mass is not told; with it, or with trim and wetted keel both measured, it would be";

    private final Hull hull;
    private final PlaningHull planing;

    /**
     * What she carries.
     *
     * @param mass [kg]; empty where it is not told
     * @param load where it is and what drives her; empty where that is not asked
     */
    record Carried(OptionalDouble mass, Optional<Load> load) {
        static final Carried UNTOLD = new Carried(OptionalDouble.empty(), Optional.empty());

        static Carried of(Load load) {
            return new Carried(OptionalDouble.of(load.mass()), Optional.of(load));
        }

        static Carried ofMass(double mass) {
            return new Carried(OptionalDouble.of(mass), Optional.empty());
        }
    }

    FastHull(Hull hull) {
        this.hull = hull;
        this.planing = new PlaningHull(hull);
    }

    /**
     * @param tooFast why she does not lie as she floats, in words
     * @param near a run at another speed, to look for the trim near it
     */
    Attitude at(Stream stream, String tooFast, Carried carried, Measured measured, Optional<PrismRun> near) {
        if (!hull.steps().isEmpty()) {
            return measured.trim().<Attitude>map(trim -> stepped(stream, trim, carried, measured)).orElseGet(() -> new NotKnown(stream.speed(), Regime.STEPPED,
                "stepped: attitude not worked out; a measured trim is needed"));
        }
        double cv = stream.speed() / Math.sqrt(Water.GRAVITY * 2 * hull.bottomEdge().y(hull.bottomEnd()));
        Optional<String> unfit = PlaningHull.unfit(hull);
        if (cv < LEAST_PLANING || unfit.isPresent()) {
            return new NotKnown(stream.speed(), Regime.BETWEEN, measured.trim(), tooFast + "; " + unfit.orElseGet(() -> String.format(Locale.ROOT,
                "speed coefficient %.2f is below 1, where the planing method begins", cv)));
        }
        Planing found = planes(stream, carried, measured.fartherForward(hull.foot() - hull.bottomEnd()), near);
        return found instanceof Planing.NotKnown unknown ? new NotKnown(stream.speed(), Regime.OUTSIDE, measured.trim(), unknown.reason() + remedy(carried, measured))
            : wetted(stream, measured.basis(), hull.bottomEnd(), found, compared(found, carried, measured, ""));
    }

    /** What would lay the stagnation line where the lift is not known. */
    private static String remedy(Carried carried, Measured measured) {
        return carried.mass().isEmpty() || measured.trim().isPresent() && measured.wettedKeel().isPresent() ? ""
            : "; a sea trial at this speed that measures both trim and wetted keel may make the stagnation line known";
    }

    /** A keel is measured from its own after end, the planing method counts from where some of the bottom has ended. */
    private Planing planes(Stream stream, Carried carried, Measured measured, Optional<PrismRun> near) {
        if (measured.trim().isPresent() && measured.wettedKeel().isPresent()) {
            return planing.measured(stream, measured.trim().get(), measured.wettedKeel().get());
        }
        if (carried.mass().isEmpty()) {
            return new Planing.NotKnown("where the bottom is wet is not known: " + NO_WEIGHTS);
        }
        double mass = carried.mass().getAsDouble();
        if (measured.trim().isPresent()) {
            return planing.trimmed(stream, mass, measured.trim().get());
        }
        if (measured.wettedKeel().isPresent()) {
            return planing.withWettedKeel(stream, mass, measured.wettedKeel().get());
        }
        return near.map(run -> planing.balancedNear(stream, carried.load().orElseThrow(), run))
            .orElseGet(() -> planing.balanced(stream, carried.load().orElseThrow()));
    }

    /** Where trim and keel were both measured: what the method lifts so, beside what she weighs. */
    private static List<String> compared(Planing found, Carried carried, Measured measured, String of) {
        if (!(found instanceof Planing.Running run) || measured.trim().isEmpty() || measured.wettedKeel().isEmpty()) {
            return List.of();
        }
        double lift = run.run().lift() / Water.GRAVITY;
        String lifts = String.format(Locale.ROOT, "at the measured trim and wetted keel the planing method lifts %.0f kg%s", lift, of);
        return List.of(carried.mass().isPresent() ? lifts + String.format(Locale.ROOT, ", %.2f of the boat's %.0f kg", lift / carried.mass().getAsDouble(),
            carried.mass().getAsDouble()) : lifts + "; what she weighs is not told");
    }

    private Wetted wetted(Stream stream, Basis basis, double end, Planing found, List<String> more) {
        List<String> doubts = new ArrayList<>();
        if (found instanceof Planing.Running run) {
            doubts.addAll(run.doubts());
            doubts.addAll(more);
            return new Planes(stream.speed(), basis, run.trim(), end, run.water(), run.line(), run.run(),
                SprayRegion.of(hull, run.run().prism(), run.run().trim(), run.line(), end), doubts);
        }
        Planing.ChinesDry dry = (Planing.ChinesDry) found;
        doubts.add("chines dry: the stagnation line is laid at the measured trim and wetted keel (Savitsky 1964, eq. 3); lift, drag and the water's mean speed"
            + " along the bottom are not known, the boat's speed stands for that");
        return new ChinesDry(stream.speed(), basis, dry.trim(), end, dry.water(), dry.line(), dry.prism().stagnationAngle(dry.keelTrim()), dry.prism().speedCoefficient(stream),
            SprayRegion.of(hull, dry.prism(), dry.keelTrim(), dry.line(), end), doubts);
    }

    private Attitude stepped(Stream stream, Angle trim, Carried carried, Measured measured) {
        double end = hull.steps().get(0).face().least();
        List<String> doubts = new ArrayList<>();
        Optional<Wetted> forward = forward(stream, trim, carried, measured, end, doubts);
        StepsUnderWay steps = new StepsUnderWay(hull, stream, trim);
        if (forward.isPresent() && forward.get() instanceof ChinesDry || forward.isEmpty()) {
            steps.behindUnknown(forward.isPresent() ? "the chines are dry ahead of it, and the contours are of bottoms with wet chines" : "how the bottom ahead of it is wet is not known");
        } else {
            steps.behind(forward.get().wettedKeel());
        }
        List<PlanRegion> clean = new ArrayList<>();
        forward.ifPresent(wet -> clean.add(WetAhead.of(hull, wet.line(), end)));
        clean.addAll(steps.clean());
        return new Stepped(stream.speed(), measured.basis(), trim, forward,
            new SteppedBottom(end, steps.air(), clean), doubts);
    }

    /**
     * The surface ahead of the first step. With the wetted keel measured, as measured; with the trim alone it is taken to
     * carry an equal share of the weight, which is our choice: more load wets more of it, so that what is then called wet is wet.
     */
    private Optional<Wetted> forward(Stream stream, Angle trim, Carried carried, Measured measured, double end, List<String> doubts) {
        int surfaces = hull.steps().size() + 1;
        PlaningHull bottom = new PlaningHull(hull, end);
        Optional<Double> wettedKeel = measured.fartherForward(hull.foot() - end).wettedKeel();
        Planing found = wettedKeel.isPresent() ? bottom.measured(stream, trim, wettedKeel.get())
            : carried.mass().isPresent() ? bottom.trimmed(stream, carried.mass().getAsDouble() / surfaces, trim)
            : new Planing.NotKnown("where it is wet is not known: " + NO_WEIGHTS);
        if (found instanceof Planing.NotKnown unknown) {
            doubts.add("the bottom ahead of the first step: " + unknown.reason()
                + (wettedKeel.isPresent() ? "" : "; a sea trial at this speed that measures the wetted keel too would lay the stagnation line"));
            return Optional.empty();
        }
        if (wettedKeel.isEmpty()) {
            doubts.add("the bottom ahead of the first step is taken to carry one part in " + surfaces
                + " of the weight (our choice: an equal share); measure the wetted keel to know");
        }
        doubts.addAll(compared(found, carried, measured, " ahead of the first step"));
        doubts.add("drag and porpoising are not known: more than one surface carries her");
        Wetted wet = wetted(stream, measured.basis(), end, found, List.of());
        if (wet instanceof ChinesDry) {
            doubts.addAll(wet.doubts());
        }
        return Optional.of(wet);
    }
}
