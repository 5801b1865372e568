package org.garboard.flow.attitude;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.appendage.Keel;
import org.garboard.craft.RunningSpeed;
import org.garboard.craft.SeaTrial;
import org.garboard.craft.TrimBand;
import org.garboard.flow.attitude.Attitude.Floats;
import org.garboard.flow.attitude.Attitude.NotKnown;
import org.garboard.flow.attitude.Attitude.Planes;
import org.garboard.flow.planing.Stream;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.units.Angle;

/** A hull whose weights are not told: how she lies to the water by her draught and by what was measured under way. */
final class TriedHull {
    private final Hull hull;
    private final Water water;
    private final Flotation flotation;
    private final Optional<Flotation.Answer> level;
    private final FastHull fast;

    /** @param draught height of the water above base, even keel [m]; empty where it is not told */
    TriedHull(Hull hull, Optional<Keel> keel, Water water, OptionalDouble draught) {
        this.hull = hull;
        this.water = water;
        this.flotation = new Flotation(hull, keel, water.density());
        this.level = draught.isPresent() ? Optional.of(flotation.to(WaterSurface.level(draught.getAsDouble()))) : Optional.empty();
        this.fast = new FastHull(hull);
    }

    /** At a speed [m/s], and at the ends of the band of trim; of loads nothing is told. */
    AtSpeed at(RunningSpeed told, double speed, Optional<SeaTrial> trial, TrimBand band) {
        Measured measured = trial.map(Measured::of).orElse(Measured.NOTHING);
        Attitude middle = at(speed, measured, FastHull.Carried.UNTOLD);
        List<AtSpeed.End> ends = new ArrayList<>();
        middle.knownTrim().ifPresent(trim -> {
            ends.add(end("bow down", speed, Angle.ofRadians(trim.radians() - band.lower().radians()), middle));
            ends.add(end("bow up", speed, Angle.ofRadians(trim.radians() + band.higher().radians()), middle));
        });
        return new AtSpeed(told, middle, ends);
    }

    /** Planing at an end of the band she carries what the method lifts at what was measured. */
    private AtSpeed.End end(String name, double speed, Angle trim, Attitude middle) {
        FastHull.Carried carried = middle instanceof Planes planes ? FastHull.Carried.ofMass(planes.run().lift() / Water.GRAVITY) : FastHull.Carried.UNTOLD;
        return new AtSpeed.End(name, Double.NaN, at(speed, Measured.asked(trim), carried));
    }

    private Attitude at(double speed, Measured measured, FastHull.Carried carried) {
        Stream stream = Stream.of(water, speed);
        double length = level.filter(Flotation.Afloat.class::isInstance).map(answer -> ((Flotation.Afloat) answer).length())
            .orElse(hull.afterEnd() - hull.forwardEnd());
        double froude = speed / Math.sqrt(Water.GRAVITY * length);
        return froude <= RunningHull.MOST_FROUDE ? floats(speed, froude, measured)
            : fast.at(stream, RunningHull.tooFast(froude), carried, measured, Optional.empty());
    }

    private Attitude floats(double speed, double froude, Measured measured) {
        if (level.isEmpty()) {
            return new NotKnown(speed, Regime.DISPLACEMENT, measured.trim(), "neither the boat's mass nor her draught is told");
        }
        Flotation.Answer answer = level.get() instanceof Flotation.Afloat even ? measured.trim().map(trim -> turned(even, trim)).orElse(even) : level.get();
        if (!(answer instanceof Flotation.Afloat afloat)) {
            return new NotKnown(speed, Regime.DISPLACEMENT, measured.trim(), ((Flotation.Sinks) answer).reason());
        }
        List<String> doubts = new ArrayList<>();
        measured.wettedKeel().ifPresent(keel -> doubts.add("the measured wetted keel is not used below planing speeds"));
        doubts.add("the boat's mass is not told: she lies at the draught that is, turned about the centre of that waterplane to the trim");
        return new Floats(speed, measured.trim().isPresent() ? measured.basis() : Basis.DRAUGHT_TOLD, afloat,
            Flotation.draught(hull, afloat.hull().water()), froude, doubts);
    }

    /** About the centre of the waterplane, by which her displacement stays to the first order. */
    private Flotation.Answer turned(Flotation.Afloat even, Angle trim) {
        return flotation.to(new WaterSurface(even.hull().water().height(), even.hull().waterplane().lcf(), trim));
    }
}
