package org.garboard.flow.attitude;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.garboard.appendage.Keel;
import org.garboard.craft.SeaTrial;
import org.garboard.flow.attitude.Attitude.Floats;
import org.garboard.flow.attitude.Attitude.NotKnown;
import org.garboard.flow.attitude.Attitude.Planes;
import org.garboard.flow.planing.PrismRun;
import org.garboard.flow.planing.Stream;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.units.Angle;

/** One hull under one load: how she lies to the water at any speed. Floated once, when made. */
public final class RunningHull implements Loaded {
    /** So fast for her wet length a boat lies about as she floats: common practice, from memory; squat of less than a degree or so is left out. */
    public static final double MOST_FROUDE = 0.40;

    private final Hull hull;
    private final Load load;
    private final Water water;
    private final LoadAtTrims trimmed;
    private final Flotation.Afloat atRest;
    private final FastHull fast;

    private RunningHull(Hull hull, Load load, Water water, Flotation flotation, Flotation.Afloat atRest) {
        this.hull = hull;
        this.load = load;
        this.water = water;
        this.trimmed = new LoadAtTrims(flotation, load, atRest);
        this.fast = new FastHull(hull);
        this.atRest = atRest;
    }

    /** @param keel what hangs below the skin */
    public static Loaded of(Hull hull, Optional<Keel> keel, Load load, Water water) {
        return of(hull, new Flotation(hull, keel, water.density()), load, water);
    }

    /** @param flotation of the same hull in the same water */
    static Loaded of(Hull hull, Flotation flotation, Load load, Water water) {
        Optional<String> outside = load.outside(hull);
        if (outside.isPresent()) {
            return new Loaded.Refused(outside.get());
        }
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
        return froude <= MOST_FROUDE ? floats(speed, froude, measured)
            : fast.at(stream, tooFast(froude), FastHull.Carried.of(load), measured, near);
    }

    static String tooFast(double froude) {
        return String.format(Locale.ROOT, "Froude number %.2f is above %.2f, to where she lies as she floats", froude, MOST_FROUDE);
    }

    private Attitude floats(double speed, double froude, Measured measured) {
        List<String> doubts = new ArrayList<>();
        measured.wettedKeel().ifPresent(keel -> doubts.add("the measured wetted keel is not used below planing speeds"));
        Flotation.Answer answer = measured.trim().map(trimmed::at).orElse(atRest);
        if (!(answer instanceof Flotation.Afloat afloat)) {
            return new NotKnown(speed, Regime.DISPLACEMENT, measured.trim(), ((Flotation.Sinks) answer).reason());
        }
        return new Floats(speed, measured.trim().isPresent() ? measured.basis() : Basis.WORKED_OUT, afloat,
            Flotation.draught(hull, afloat.hull().water()), froude, doubts);
    }
}
