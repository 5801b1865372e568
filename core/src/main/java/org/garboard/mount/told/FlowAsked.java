package org.garboard.mount.told;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.garboard.acoustics.beam.EchoLoss;
import org.garboard.acoustics.beam.Element;
import org.garboard.craft.SoundBeam;
import org.garboard.finding.NotKnown;
import org.garboard.flow.place.Standing;
import org.garboard.mount.Bed;
import org.garboard.mount.Check;
import org.garboard.mount.Demand;
import org.garboard.mount.Installation;
import org.garboard.mount.LimitName;
import org.garboard.mount.Limits;
import org.garboard.mount.OpenQuestion;
import org.garboard.mount.Surroundings;

/**
 * What a mount asks of the water under way, at every speed of the profile. A speed at which no method holds is NOT KNOWN, with
 * the reason. The layer is judged from 8 knots up.
 */
public final class FlowAsked {

    private FlowAsked() {
    }

    /**
     * Solid water, and where the beam looks at the running trim.
     *
     * @param ahead how far the mount reaches ahead of its middle [m]
     * @param seat how far the body leans outboard by its seat, as for {@link SoundAsked#atRest}
     */
    public static List<Demand> demands(Installation installation, Surroundings around, double ahead, ToDoubleFunction<Bed> seat) {
        List<Demand> demands = new ArrayList<>();
        for (WaterAtSpeed water : around.water()) {
            if (water.refusal().isEmpty()) {
                demands.add(Demand.atLeast("wet at " + water.words(), installation.limits().of(LimitName.BEHIND_STAGNATION),
                    bed -> water.behindStagnation(bed.x() - ahead, bed.y()),
                    "The place runs in solid water, whatever load and trim.", "At an end of the band of load and trim the place runs dry or in spray.").at(water.knots()));
                for (SoundBeam beam : installation.details().beams()) {
                    demands.add(tilt(installation, water, beam, seat));
                }
            }
        }
        return demands;
    }

    private static Demand tilt(Installation installation, WaterAtSpeed water, SoundBeam beam, ToDoubleFunction<Bed> seat) {
        EchoLoss loss = EchoLoss.of(Element.of(beam, SoundAsked.SEA_SPEED));
        double inclination = installation.transducer().elementInclination().radians();
        double[] cos = new double[water.count()];
        double[] sin = new double[water.count()];
        for (int i = 0; i < water.count(); i++) {
            cos[i] = Math.cos(water.trim(i));
            sin[i] = Math.sin(water.trim(i));
        }
        return Demand.atMost("echo lost by tilt at " + water.words() + ", " + SoundAsked.kilohertz(beam), installation.limits().of(LimitName.ECHO_LOSS),
            bed -> {
                double along = Math.tan(bed.slope());
                double athwart = Math.tan(seat.applyAsDouble(bed) - inclination);
                double worst = 0;
                for (int i = 0; i < cos.length; i++) {
                    // a bow that is up turns what looks down ahead
                    worst = Math.max(worst, loss.at(along * cos[i] - sin[i], athwart, -cos[i] - along * sin[i]));
                }
                return worst;
            }, "At the running trim, over its whole band, straight below the beam is nearly as strong as where it looks.",
            "At an end of the band of running trim the beam looks so far ahead or astern that too little comes back from straight below.").at(water.knots());
    }

    /** Of a face that lies flush in the skin: the layer itself. */
    public static List<Demand> flush(Installation installation, Surroundings around) {
        List<Demand> demands = new ArrayList<>();
        for (WaterAtSpeed water : judged(around)) {
            demands.add(Demand.atMost("boundary layer at " + water.words(), installation.limits().of(LimitName.LAYER_THICKNESS),
                bed -> water.thickness(bed.x(), bed.y()), "The slow water next to the skin is thin enough for a flush face.",
                "The slow water next to the skin is too thick for a face that lies in it.").at(water.knots()));
        }
        return demands;
    }

    /** Of a face that hangs below the skin by a height [m]. */
    public static List<Demand> proud(Installation installation, Surroundings around, ToDoubleFunction<Bed> height) {
        List<Demand> demands = new ArrayList<>();
        for (WaterAtSpeed water : judged(around)) {
            demands.add(Demand.atLeast("face clear of the layer at " + water.words(), installation.limits().of(LimitName.FACE_CLEAR_OF_LAYER),
                bed -> {
                    double needed = water.clearHeight(bed.x(), bed.y());
                    return needed > 0 ? height.applyAsDouble(bed) / needed : Double.POSITIVE_INFINITY;
                }, "The face hangs below most of the slow water next to the skin.", "The face hangs in the slow water next to the skin: a higher block is needed.").at(water.knots()));
        }
        return demands;
    }

    /**
     * Least height of a face below the skin at a place that {@link #proud} lets pass at every speed that is judged, all over the
     * band of load and trim [m]; 0 where nothing is known.
     */
    public static double clearHeight(Surroundings around, Limits limits, double x, double y) {
        double most = 0;
        for (WaterAtSpeed water : around.water()) {
            if (isJudged(water)) {
                most = Math.max(most, water.clearHeight(x, y));
            }
        }
        return most * limits.of(LimitName.FACE_CLEAR_OF_LAYER).value();
    }

    private static boolean isJudged(WaterAtSpeed water) {
        return water.refusal().isEmpty() && water.knots() >= Standing.USUAL_FROM;
    }

    private static List<WaterAtSpeed> judged(Surroundings around) {
        return around.water().stream().filter(FlowAsked::isJudged).toList();
    }

    /** Of what is asked, all that stays open everywhere: nothing told of her running, or no method that holds. */
    public static List<Check> open(Surroundings around, OpenQuestion... asked) {
        List<Check> open = new ArrayList<>();
        for (OpenQuestion question : asked) {
            boolean answered = !around.water().isEmpty() && (question == OpenQuestion.WET || question == OpenQuestion.LAYER);
            if (!answered) {
                open.add(question.check());
                continue;
            }
            for (WaterAtSpeed water : around.water()) {
                if (!water.refusal().isEmpty() && !(question == OpenQuestion.LAYER && water.knots() < Standing.USUAL_FROM)) {
                    open.add(Check.of(new NotKnown(question.words() + ", at " + water.words(), "common practice, no source",
                        "Not worked out: " + water.refusal() + ". " + question.check().sentence())).at(water.knots()));
                }
            }
        }
        return open;
    }
}
