package org.garboard.flow.attitude;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.appendage.Keel;
import org.garboard.craft.SeaTrial;
import org.garboard.flow.attitude.Attitude.Floats;
import org.garboard.flow.attitude.Attitude.NotKnown;
import org.garboard.flow.attitude.Attitude.Planes;
import org.garboard.flow.attitude.Attitude.Stepped;
import org.garboard.flow.planing.PrismRun;
import org.garboard.flow.planing.Stream;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.flow.steps.StepsUnderWay;
import org.garboard.flow.steps.SteppedBottom;
import org.garboard.flow.water.Water;
import org.garboard.geometry.Ring;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.units.Angle;

/** One hull under one load: how she lies to the water at any speed. Floated once, when made. */
public final class RunningHull implements Loaded {
    /** So fast for her wet length a boat lies about as she floats: common practice, from memory; squat of less than a degree or so is left out. */
    public static final double MOST_FROUDE = 0.40;
    /** Speed coefficient on the beam aft at which the planing method begins. */
    private static final double LEAST_PLANING = 1;

    private final Hull hull;
    private final Load load;
    private final Water water;
    private final Flotation flotation;
    private final Flotation.Afloat atRest;
    private final PlaningHull planing;

    private RunningHull(Hull hull, Load load, Water water, Flotation flotation, Flotation.Afloat atRest) {
        this.hull = hull;
        this.load = load;
        this.water = water;
        this.flotation = flotation;
        this.planing = new PlaningHull(hull);
        this.atRest = atRest;
    }

    /** @param keel what hangs below the skin */
    public static Loaded of(Hull hull, Optional<Keel> keel, Load load, Water water) {
        Optional<String> outside = load.outside(hull);
        if (outside.isPresent()) {
            return new Loaded.Refused(outside.get());
        }
        Flotation flotation = new Flotation(hull, keel, water.density());
        Flotation.Answer answer = flotation.atRest(load);
        return answer instanceof Flotation.Afloat afloat ? new RunningHull(hull, load, water, flotation, afloat)
            : new Loaded.Refused(((Flotation.Sinks) answer).reason());
    }

    public Load load() {
        return load;
    }

    /** How she floats at rest. */
    public Flotation.Afloat atRest() {
        return atRest;
    }

    /** At a speed [m/s], worked out. */
    public Attitude at(double speed) {
        return at(speed, Measured.NOTHING, Optional.empty());
    }

    /** At each of some speeds [m/s], each trim looked for near the one before. */
    public List<Attitude> at(List<Double> speeds) {
        List<Attitude> all = new ArrayList<>();
        Optional<PrismRun> near = Optional.empty();
        for (double speed : speeds) {
            Attitude attitude = at(speed, Measured.NOTHING, near);
            near = attitude instanceof Planes planes ? Optional.of(planes.run()) : near;
            all.add(attitude);
        }
        return all;
    }

    /** At a speed [m/s] and a trim of the base line that is asked for, the load carried. */
    public Attitude at(double speed, Angle trim) {
        return at(speed, Measured.asked(trim), Optional.empty());
    }

    /** At a speed [m/s] with what was measured at it. */
    public Attitude at(double speed, SeaTrial trial) {
        return at(speed, Measured.of(trial), Optional.empty());
    }

    private Attitude at(double speed, Measured measured, Optional<PrismRun> near) {
        Stream stream = Stream.of(water, speed);
        double froude = speed / Math.sqrt(Water.GRAVITY * atRest.length());
        if (froude <= MOST_FROUDE) {
            return floats(speed, froude, measured);
        }
        if (!hull.steps().isEmpty()) {
            return measured.trim().<Attitude>map(trim -> stepped(stream, trim, measured)).orElseGet(() -> new NotKnown(speed, Regime.STEPPED,
                "stepped: attitude not worked out; a measured trim is needed"));
        }
        double cv = speed / Math.sqrt(Water.GRAVITY * 2 * hull.bottomEdge().y(hull.bottomEnd()));
        Optional<String> unfit = PlaningHull.unfit(hull);
        if (cv < LEAST_PLANING || unfit.isPresent()) {
            return new NotKnown(speed, Regime.BETWEEN, String.format(Locale.ROOT, "Froude number %.2f is above %.2f, to where she lies as she floats; ",
                froude, MOST_FROUDE) + unfit.orElseGet(() -> String.format(Locale.ROOT,
                "speed coefficient %.2f is below 1, where the planing method begins", cv)));
        }
        Planing found = planes(planing, stream, load, measured, near);
        if (!(found instanceof Planing.Running run)) {
            return new NotKnown(speed, Regime.OUTSIDE, ((Planing.NotKnown) found).reason());
        }
        return planes(speed, measured.basis(), hull.bottomEnd(), run, run.doubts());
    }

    /** A keel is measured from its own after end, the planing method counts from where some of the bottom has ended. */
    private Planing planes(PlaningHull bottom, Stream stream, Load carried, Measured told, Optional<PrismRun> near) {
        Measured measured = told.fartherForward(hull.foot() - hull.bottomEnd());
        if (measured.trim().isPresent()) {
            return measured.wettedKeel().isPresent() ? bottom.measured(stream, carried, measured.trim().get(), measured.wettedKeel().get())
                : bottom.trimmed(stream, carried, measured.trim().get());
        }
        if (measured.wettedKeel().isPresent()) {
            return bottom.withWettedKeel(stream, carried, measured.wettedKeel().get());
        }
        return near.map(run -> bottom.balancedNear(stream, carried, run)).orElseGet(() -> bottom.balanced(stream, carried));
    }

    private Planes planes(double speed, Basis basis, double end, Planing.Running run, List<String> doubts) {
        return new Planes(speed, basis, run.trim(), end, run.water(), run.line(), run.run(), SprayRegion.of(hull, run.run(), run.line()), doubts);
    }

    private Attitude floats(double speed, double froude, Measured measured) {
        List<String> doubts = new ArrayList<>();
        measured.wettedKeel().ifPresent(keel -> doubts.add("the measured wetted keel is not used below planing speeds"));
        Flotation.Answer answer = measured.trim().map(trim -> flotation.at(load, trim)).orElse(atRest);
        if (!(answer instanceof Flotation.Afloat afloat)) {
            return new NotKnown(speed, Regime.DISPLACEMENT, ((Flotation.Sinks) answer).reason());
        }
        return new Floats(speed, measured.trim().isPresent() ? measured.basis() : Basis.WORKED_OUT, afloat, draught(afloat.hull().water()), froude, doubts);
    }

    private double draught(WaterSurface surface) {
        double deepest = 0;
        for (int i = 0; i <= 200; i++) {
            double x = hull.keel().forwardEnd() + (hull.foot() - hull.keel().forwardEnd()) * i / 200;
            deepest = Math.max(deepest, surface.at(x) - hull.keel().z(x));
        }
        return deepest * Math.cos(surface.trim().radians());
    }

    private Attitude stepped(Stream stream, Angle trim, Measured measured) {
        double end = hull.steps().get(0).face().least();
        List<String> doubts = new ArrayList<>();
        Optional<Planes> forward = forward(stream, trim, measured, end, doubts);
        StepsUnderWay steps = new StepsUnderWay(hull, stream, trim);
        steps.behind(forward.isPresent() ? OptionalDouble.of(forward.get().wettedKeel()) : OptionalDouble.empty());
        List<PlanRegion> clean = new ArrayList<>();
        forward.ifPresent(planes -> clean.add(wet(planes.line(), end)));
        clean.addAll(steps.clean());
        double beam = 2 * hull.bottomEdge().y(end);
        return new Stepped(stream.speed(), measured.basis(), trim, forward,
            new SteppedBottom(new MeanPrism(hull, end).over(beam), end, end - load.x(), steps.air(), clean), doubts);
    }

    /**
     * The surface ahead of the first step. With the wetted keel measured, as measured; with the trim alone it is taken to
     * carry an equal share of the weight, which is our choice: more load wets more of it, so that what is then called wet is wet.
     */
    private Optional<Planes> forward(Stream stream, Angle trim, Measured measured, double end, List<String> doubts) {
        int surfaces = hull.steps().size() + 1;
        PlaningHull bottom = new PlaningHull(hull, end);
        Load share = load.withMass(load.mass() / surfaces);
        Optional<Double> wettedKeel = measured.fartherForward(hull.foot() - end).wettedKeel();
        Planing found = wettedKeel.map(keel -> bottom.measured(stream, share, trim, keel)).orElseGet(() -> bottom.trimmed(stream, share, trim));
        if (!(found instanceof Planing.Running run)) {
            doubts.add("the bottom ahead of the first step: " + ((Planing.NotKnown) found).reason());
            return Optional.empty();
        }
        if (measured.wettedKeel().isEmpty()) {
            doubts.add("the bottom ahead of the first step is taken to carry one part in " + surfaces
                + " of the weight (our choice: an equal share); measure the wetted keel to know");
        }
        doubts.add("drag and porpoising are not known: more than one surface carries her");
        return Optional.of(planes(stream.speed(), measured.basis(), end, run, List.of()));
    }

    private PlanRegion wet(StagnationLine line, double end) {
        List<Vector2D> outline = new ArrayList<>(line.points());
        int pieces = 20;
        for (int i = 1; i <= pieces; i++) {
            double x = line.atChine() + (end - line.atChine()) * i / pieces;
            outline.add(Vector2D.of(x, hull.bottomEdge().y(x)));
        }
        outline.add(Vector2D.of(end, 0));
        return new PlanRegion(new Ring(outline), List.of());
    }
}
