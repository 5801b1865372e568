package org.garboard.mount.water;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.garboard.acoustics.beam.EchoLoss;
import org.garboard.finding.NotKnown;
import org.garboard.mount.Bed;
import org.garboard.mount.Check;
import org.garboard.mount.Demand;
import org.garboard.mount.Footprint;
import org.garboard.mount.Installation;
import org.garboard.mount.LimitName;
import org.garboard.mount.Limits;
import org.garboard.mount.OpenQuestion;
import org.garboard.mount.Surroundings;
import org.garboard.units.FixedDecimal;

/**
 * What a mount asks of the water under way, at every speed of the profile and every end of the band of load and trim. Layer and
 * cavitation are judged from a speed up that the job may set.
 */
public final class FlowAsked {
    static final String WET = "wet at ";
    static final String DEPTH = "depth of the skin at ";

    private FlowAsked() {
    }

    /**
     * Solid water, wakes, what comes down from the surface, and where the beam looks at the running trim.
     *
     * @param ahead how far the mount reaches ahead of its middle [m]
     * @param footprint what the water must reach undisturbed
     * @param lean how far the body leans outboard by its seat: deadrise where it lies on the skin, 0 where it is set level
     */
    public static List<Demand> demands(Installation installation, Surroundings around, double ahead, Footprint footprint, ToDoubleFunction<Bed> lean) {
        List<Demand> demands = new ArrayList<>();
        List<WaterAtSpeed> known = known(around);
        List<EchoLoss> losses = known.isEmpty() ? List.of() : TiltAsked.losses(installation, known.get(0).water());
        for (WaterAtSpeed water : known) {
            demands.add(water.floats() ? deep(installation, water) : wet(installation, water, ahead));
            demands.addAll(TiltAsked.demands(installation, losses, water, lean));
        }
        demands.addAll(WakeAsked.demands(installation, around, footprint));
        return demands;
    }

    private static Demand wet(Installation installation, WaterAtSpeed water, double ahead) {
        WaterAtSpeed.Reading reading = (end, bed) -> water.end(end).floats() ? Double.POSITIVE_INFINITY
            : water.end(end).run(bed.x() - ahead, bed.y()) / water.beam();
        return Demand.atLeast(WET + water.words(), installation.limits().of(LimitName.BEHIND_STAGNATION), bed -> water.least(reading, bed),
            "The place runs in solid water.", "The place runs dry or in spray, or too near to where the water meets the bottom.")
            .leavingOut(bed -> water.missing().isEmpty() ? water.left(reading, bed) : water.missing()).telling(bed -> metAt(water, reading, bed)).at(water.knots())
            .ofPlaceAlone();
    }

    private static String metAt(WaterAtSpeed water, WaterAtSpeed.Reading reading, Bed bed) {
        double beams = water.least(reading, bed);
        if (Double.isNaN(beams) || beams == Double.POSITIVE_INFINITY) {
            return "";
        }
        EndOfBand end = water.governing(reading, bed, beams);
        if (Double.isInfinite(beams)) {
            String reason = end.reason(bed.x(), bed.y());
            return reason.isEmpty() ? "No water runs along the bottom there, " + end.name() + "." : reason;
        }
        return "The water meets the bottom " + FixedDecimal.format(Math.abs(beams) * water.beam(), 2) + " m " + (beams > 0 ? "ahead of" : "abaft of")
            + " the forward edge, " + end.name() + ".";
    }

    private static Demand deep(Installation installation, WaterAtSpeed water) {
        WaterAtSpeed.Reading reading = (end, bed) -> water.end(end).depth(bed.x(), bed.highest());
        return Demand.atLeast(DEPTH + water.words(), installation.limits().of(LimitName.IMMERSION), bed -> water.least(reading, bed),
            "The place lies deep enough, whatever load and trim.", "At an end of the band of load and trim the place lies too near the surface, or above it.")
            .leavingOut(bed -> water.missing())
            .telling(bed -> "Least " + water.governing(reading, bed, water.least(reading, bed)).name() + ".").at(water.knots());
    }

    /** Of a face that lies flush in the skin: the layer itself. */
    public static List<Demand> flush(Installation installation, Surroundings around) {
        List<Demand> demands = new ArrayList<>();
        for (WaterAtSpeed water : judged(installation, around)) {
            WaterAtSpeed.Reading thick = thickness(water);
            demands.add(Demand.atMost("boundary layer at " + water.words(), installation.limits().of(LimitName.LAYER_THICKNESS),
                bed -> water.most(thick, bed), "The slow water next to the skin is thin enough for a face that lies in it.",
                "The slow water next to the skin is too thick for a face that lies in it.")
                .leavingOut(bed -> water.left(thick, bed)).telling(bed -> layer(water, thick, bed, "")).at(water.knots())
                .ofPlaceAlone());
        }
        return demands;
    }

    /** Of a face that hangs below the skin by a height [m]. */
    public static List<Demand> proud(Installation installation, Surroundings around, ToDoubleFunction<Bed> height) {
        List<Demand> demands = new ArrayList<>();
        for (WaterAtSpeed water : judged(installation, around)) {
            WaterAtSpeed.Reading thick = thickness(water);
            WaterAtSpeed.Reading needed = (end, bed) -> water.clearHeight(end, bed.x(), bed.y());
            demands.add(Demand.atLeast("face clear of the layer at " + water.words(), installation.limits().of(LimitName.FACE_CLEAR_OF_LAYER),
                bed -> {
                    double most = water.most(needed, bed);
                    return most > 0 || Double.isNaN(most) ? height.applyAsDouble(bed) / most : Double.POSITIVE_INFINITY;
                }, "The face hangs below most of the slow water next to the skin.", "The face hangs in the slow water next to the skin: a higher block is needed.")
                .leavingOut(bed -> water.left(needed, bed)).telling(bed -> layer(water, thick, bed, millimetres(height.applyAsDouble(bed))
                    + " below the skin, of " + millimetres(water.most(needed, bed)) + " that it needs; ")).at(water.knots()));
        }
        return demands;
    }

    /**
     * Least height of a face below the skin at a place that {@link #proud} lets pass at every speed that is judged, as far as the band
     * of load and trim is known [m]; 0 where nothing is known.
     */
    public static double clearHeight(List<WaterAtSpeed> speeds, Limits limits, double x, double y) {
        double from = limits.of(LimitName.JUDGED_FROM).value();
        double most = 0;
        for (WaterAtSpeed water : speeds) {
            if (water.knots() >= from) {
                most = Math.max(most, water.clearHeight(x, y));
            }
        }
        return most * limits.of(LimitName.FACE_CLEAR_OF_LAYER).value();
    }

    /** No thicker is the layer at a place at any speed that is judged [m]; 0 where nothing is told of her running. */
    public static double atMostThick(List<WaterAtSpeed> speeds, Limits limits, double x, double y) {
        double from = limits.of(LimitName.JUDGED_FROM).value();
        double most = 0;
        for (WaterAtSpeed water : speeds) {
            if (water.knots() >= from) {
                most = Math.max(most, water.atMostThick(x, y));
            }
        }
        return most;
    }

    /**
     * How far a place behind a step lies abaft of the air there, the least of every speed and every end of the band [beams]; NaN where
     * one of them is not known, or none is told.
     */
    public static double abaftOfAir(List<WaterAtSpeed> speeds, double x, double y) {
        double least = speeds.isEmpty() ? Double.NaN : Double.POSITIVE_INFINITY;
        for (WaterAtSpeed water : speeds) {
            if (!water.missing().isEmpty()) {
                return Double.NaN;
            }
            for (int end = 0; end < water.ends(); end++) {
                least = water.end(end).floats() ? least : Math.min(least, water.end(end).run(x, y) / water.beam());
            }
        }
        return least;
    }

    private static WaterAtSpeed.Reading thickness(WaterAtSpeed water) {
        return (end, bed) -> water.thickness(end, bed.x(), bed.y());
    }

    /** "The face lies 12 mm below the skin in a layer of 48 mm at 32 kn, light, bow up." */
    private static String layer(WaterAtSpeed water, WaterAtSpeed.Reading thick, Bed bed, String height) {
        double most = water.most(thick, bed);
        return Double.isNaN(most) ? "" : "The face lies " + height + "in a layer of " + millimetres(most) + " at "
            + FixedDecimal.format(water.knots(), 0) + " kn, " + water.governing(thick, bed, most).name() + ".";
    }

    private static String millimetres(double metres) {
        return FixedDecimal.format(metres * 1000, 0) + " mm";
    }

    private static List<WaterAtSpeed> known(Surroundings around) {
        return around.water().speeds().stream().filter(water -> !water.isUnknown()).toList();
    }

    static List<WaterAtSpeed> judged(Installation installation, Surroundings around) {
        double from = installation.limits().of(LimitName.JUDGED_FROM).value();
        return known(around).stream().filter(water -> water.knots() >= from).toList();
    }

    /** Of what is asked, all that stays open everywhere: nothing told of her running, or no method that holds. */
    public static List<Check> open(Installation installation, Surroundings around, OpenQuestion... asked) {
        double from = installation.limits().of(LimitName.JUDGED_FROM).value();
        List<Check> open = new ArrayList<>();
        for (OpenQuestion question : asked) {
            if (around.water().speeds().isEmpty() || question == OpenQuestion.WAKE && !around.listed()) {
                open.add(question.check());
                continue;
            }
            boolean slowCounts = question == OpenQuestion.WET || question == OpenQuestion.WAKE;
            for (WaterAtSpeed water : around.water().speeds()) {
                if (water.isUnknown() && (slowCounts || water.knots() >= from)) {
                    open.add(notKnown(question, water.words(), water.missing()).at(water.knots()));
                }
            }
            if (question == OpenQuestion.WAKE && !around.water().untraced().isEmpty()) {
                open.add(notKnown(question, "rest speeds", around.water().untraced()));
            }
        }
        return open;
    }

    private static Check notKnown(OpenQuestion question, String speeds, String why) {
        return Check.of(new NotKnown(question.words() + " at " + speeds, "common practice, no source", why + " " + question.check().sentence()));
    }
}
