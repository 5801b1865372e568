package org.garboard.flow.attitude;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;
import org.garboard.appendage.Keel;
import org.garboard.craft.Craft;
import org.garboard.craft.RunningSpeed;
import org.garboard.craft.SeaTrial;
import org.garboard.craft.ThrustLine;
import org.garboard.craft.TrimBand;
import org.garboard.craft.Weights;
import org.garboard.flow.water.Water;
import org.garboard.hull.Hull;
import org.garboard.units.Angle;

/** A craft's running: every speed of her profile, with the band of load and trim. */
public final class CraftRunning {
    /** A sea trial counts for a speed this near: our choice [kn]. */
    public static final double SAME_SPEED = 0.5;
    private static final double KNOT = 1852 / 3600.0;

    private final Craft craft;
    private final Hulls hulls;

    /** Under her loads, or without them. */
    private sealed interface Hulls permits Weighed, Untold {
    }

    private record Weighed(RunningHull light, RunningHull middle, RunningHull full) implements Hulls {
    }

    private record Untold(TriedHull hull) implements Hulls {
    }

    /** There is something to go by, and nothing is wrong with it. */
    public sealed interface Answer permits Ready, NotReady {
    }

    /** @param running of the craft */
    public record Ready(CraftRunning running) implements Answer {
    }

    /** @param reason what is not told, or what is outside which range */
    public record NotReady(String reason) implements Answer {
    }

    private CraftRunning(Craft craft, Hulls hulls) {
        this.craft = craft;
        this.hulls = hulls;
    }

    /** @param keel what hangs below the skin */
    public static Answer of(Hull hull, Optional<Keel> keel, Craft craft) {
        return of(hull, keel, craft, OptionalDouble.empty());
    }

    /**
     * @param keel what hangs below the skin
     * @param draught height of the water above base, even keel [m], by which she lies where her weights are not told
     */
    public static Answer of(Hull hull, Optional<Keel> keel, Craft craft, OptionalDouble draught) {
        if (craft.weights().isEmpty()) {
            return craft.trials().isEmpty() && draught.isEmpty() ? new NotReady("the boat's mass and centre of gravity are not told")
                : new Ready(new CraftRunning(craft, new Untold(new TriedHull(hull, keel, water(craft), draught))));
        }
        Weights weights = craft.weights().get();
        Flotation flotation = new Flotation(hull, keel, water(craft).density());
        List<Loaded> hulls = Stream.of(weights.light(), 0.5 * (weights.light() + weights.full()), weights.full()).distinct().parallel()
            .map(mass -> RunningHull.of(hull, flotation, load(hull, craft, weights, mass), water(craft))).toList();
        for (Loaded loaded : hulls) {
            if (loaded instanceof Loaded.Refused refused) {
                return new NotReady(refused.reason());
            }
        }
        return new Ready(new CraftRunning(craft,
            new Weighed((RunningHull) hulls.get(0), (RunningHull) hulls.get(hulls.size() / 2), (RunningHull) hulls.get(hulls.size() - 1))));
    }

    private static Water water(Craft craft) {
        return new Water(craft.water().celsius(), craft.water().salinity());
    }

    private static Load load(Hull hull, Craft craft, Weights weights, double mass) {
        ThrustLine thrust = craft.drive().thrust();
        return new Load(mass, weights.x(hull), weights.vcg(), thrust.height(), thrust.inclination());
    }

    /** Where the line of thrust comes from, in words: told, or the usual one for the drive. */
    public String thrust() {
        ThrustLine line = craft.drive().thrust();
        return craft.drive().toldThrust().isPresent() ? "line of thrust as told" : String.format(Locale.ROOT,
            "line of thrust not told: the usual one for %s, %.2f m above the transom's foot, %.0f deg to the base line (common practice, no source)",
            craft.drive().kind().words(), line.height(), line.inclination().degrees());
    }

    /** Every speed of the profile, slowest first. */
    public List<AtSpeed> profile() {
        return craft.speeds().stream().map(this::at).toList();
    }

    /** One speed. */
    public AtSpeed at(RunningSpeed told) {
        double speed = told.knots() * KNOT;
        Optional<SeaTrial> trial = trial(told.knots());
        if (hulls instanceof Untold untold) {
            return untold.hull().at(told, speed, trial, craft.band());
        }
        Weighed weighed = (Weighed) hulls;
        Attitude attitude = trial.map(each -> weighed.middle().at(speed, each)).orElseGet(() -> weighed.middle().at(speed));
        List<AtSpeed.End> ends = new ArrayList<>();
        ends("light", weighed.light(), speed, trial, ends);
        if (weighed.full() != weighed.light()) {
            ends("full", weighed.full(), speed, trial, ends);
        }
        return new AtSpeed(told, attitude, ends);
    }

    private Optional<SeaTrial> trial(double knots) {
        return craft.trials().stream().filter(each -> Math.abs(each.knots() - knots) <= SAME_SPEED)
            .min((one, other) -> Double.compare(Math.abs(one.knots() - knots), Math.abs(other.knots() - knots)));
    }

    /** What was measured is taken to hold for every load: it is not told under which it was. */
    private void ends(String name, RunningHull hull, double speed, Optional<SeaTrial> trial, List<AtSpeed.End> ends) {
        Attitude own = trial.map(each -> hull.at(speed, each)).orElseGet(() -> hull.at(speed));
        Optional<Angle> trim = own.knownTrim();
        if (trim.isEmpty()) {
            ends.add(new AtSpeed.End(name, hull.load().mass(), own));
            return;
        }
        TrimBand band = craft.band();
        double down = trim.get().radians() - band.lower().radians();
        double up = trim.get().radians() + band.higher().radians();
        List<Attitude> turned = Stream.of(down, up).parallel().map(Angle::ofRadians).map(angle -> hull.at(speed, angle)).toList();
        ends.add(new AtSpeed.End(name + ", bow down", hull.load().mass(), turned.get(0)));
        ends.add(new AtSpeed.End(name + ", bow up", hull.load().mass(), turned.get(1)));
    }
}
