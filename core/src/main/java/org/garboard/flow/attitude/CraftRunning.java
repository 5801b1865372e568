package org.garboard.flow.attitude;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
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
    private final RunningHull light;
    private final RunningHull middle;
    private final RunningHull full;

    /** Weights stand there, and nothing is wrong with them. */
    public sealed interface Answer permits Ready, NotReady {
    }

    /** @param running of the craft */
    public record Ready(CraftRunning running) implements Answer {
    }

    /** @param reason what is not told, or what is outside which range */
    public record NotReady(String reason) implements Answer {
    }

    private CraftRunning(Craft craft, RunningHull light, RunningHull middle, RunningHull full) {
        this.craft = craft;
        this.light = light;
        this.middle = middle;
        this.full = full;
    }

    /** @param keel what hangs below the skin */
    public static Answer of(Hull hull, Optional<Keel> keel, Craft craft) {
        if (craft.weights().isEmpty()) {
            return new NotReady("the boat's mass and centre of gravity are not told");
        }
        Weights weights = craft.weights().get();
        List<RunningHull> hulls = new ArrayList<>();
        for (double mass : new double[] {weights.light(), 0.5 * (weights.light() + weights.full()), weights.full()}) {
            Loaded loaded = !hulls.isEmpty() && weights.light() == weights.full() ? hulls.get(0)
                : RunningHull.of(hull, keel, load(hull, craft, weights, mass), water(craft));
            if (!(loaded instanceof RunningHull running)) {
                return new NotReady(((Loaded.Refused) loaded).reason());
            }
            hulls.add(running);
        }
        return new Ready(new CraftRunning(craft, hulls.get(0), hulls.get(1), hulls.get(2)));
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

    /** How she floats at rest at the mean of light and full. */
    public Flotation.Afloat atRest() {
        return middle.atRest();
    }

    /** Every speed of the profile, slowest first. */
    public List<AtSpeed> profile() {
        return craft.speeds().stream().map(this::at).toList();
    }

    /** One speed. */
    public AtSpeed at(RunningSpeed told) {
        double speed = told.knots() * KNOT;
        Optional<SeaTrial> trial = trial(told.knots());
        Attitude attitude = trial.map(each -> middle.at(speed, each)).orElseGet(() -> middle.at(speed));
        List<AtSpeed.End> ends = new ArrayList<>();
        ends("light", light, speed, trial, ends);
        if (full != light) {
            ends("full", full, speed, trial, ends);
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
        ends.add(end(name + ", bow down", hull, speed, trim.get().radians() - band.lower().radians()));
        ends.add(end(name + ", bow up", hull, speed, trim.get().radians() + band.higher().radians()));
    }

    private static AtSpeed.End end(String name, RunningHull hull, double speed, double trim) {
        return new AtSpeed.End(name, hull.load().mass(), hull.at(speed, Angle.ofRadians(trim)));
    }
}
