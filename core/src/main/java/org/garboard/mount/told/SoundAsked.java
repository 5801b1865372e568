package org.garboard.mount.told;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import org.garboard.acoustics.beam.EchoLoss;
import org.garboard.acoustics.beam.Element;
import org.garboard.acoustics.inhull.LossByIncidence;
import org.garboard.acoustics.laminate.Fluid;
import org.garboard.craft.SoundBeam;
import org.garboard.finding.Finding;
import org.garboard.mount.Bed;
import org.garboard.mount.Check;
import org.garboard.mount.Demand;
import org.garboard.mount.Installation;
import org.garboard.mount.LimitName;
import org.garboard.mount.OpenQuestion;
import org.garboard.mount.Surroundings;
import org.garboard.skin.HullSkin;
import org.garboard.skin.InHullRule;
import org.garboard.skin.Layup;
import org.garboard.skin.ThicknessHere;
import org.garboard.units.FixedDecimal;

/** What a mount asks of where the beam looks, and of what the skin lets through. */
public final class SoundAsked {
    /** Sea water at 15 degrees, as the textbook values of the acoustics are taken in. */
    private static final Fluid SEA = new Fluid(1026, 1507);
    static final double SEA_SPEED = SEA.speed();

    private SoundAsked() {
    }

    /**
     * Echo lost by a beam that does not look straight down, boat at rest; one demand for each beam.
     *
     * @param seat how far the body leans outboard by its seat: deadrise where it lies on the skin, 0 where it is set level
     */
    public static List<Demand> atRest(Installation installation, ToDoubleFunction<Bed> seat) {
        List<Demand> demands = new ArrayList<>();
        double inclination = installation.transducer().elementInclination().radians();
        for (SoundBeam beam : installation.details().beams()) {
            EchoLoss loss = EchoLoss.of(Element.of(beam, SEA.speed()));
            demands.add(Demand.atMost("echo lost by tilt at rest, " + kilohertz(beam), installation.limits().of(LimitName.ECHO_LOSS),
                bed -> {
                    double lean = seat.applyAsDouble(bed) - inclination;
                    return loss.at(Math.tan(bed.slope()), Math.tan(lean), -1);
                },
                "Straight below the beam is nearly as strong as where it looks.", "The beam looks so far aside that too little comes back from straight below."));
        }
        return demands;
    }

    /** What the skin takes of a beam from inside, of an element that stands plumb in a bath. */
    public static List<Demand> throughSkin(Installation installation, Surroundings around) {
        if (around.skin().isEmpty() || refusal(installation, around).isPresent()) {
            return List.of();
        }
        HullSkin skin = around.skin().get();
        InHullRule rule = rule(skin);
        List<Demand> demands = new ArrayList<>();
        Optional<Layup> everywhere = skin.readings().isEmpty() ? skin.layup() : Optional.empty();
        for (SoundBeam beam : installation.details().beams()) {
            String name = "loss through the skin, " + kilohertz(beam);
            if (everywhere.isPresent()) {
                double thickness = everywhere.get().thickness();
                LossByIncidence losses = rule.losses(thickness, thickness, beam);
                demands.add(lost(installation, name, bed -> losses.at(incidence(bed))));
            } else {
                MeasuredLosses losses = new MeasuredLosses(skin, rule, beam);
                demands.add(lost(installation, name, bed -> losses.at(bed, incidence(bed))).leavingOpen()
                    .telling(bed -> untold(skin, bed)));
            }
        }
        return demands;
    }

    private static Demand lost(Installation installation, String name, ToDoubleFunction<Bed> reading) {
        return Demand.atMost(name, installation.limits().of(LimitName.SKIN_LOSS), reading,
            "Enough sound gets through the skin: the mean over the whole beam, each way, the worst within a tenth of the thickness.",
            "Too little sound gets through the skin: the mean over the whole beam, each way, the worst within a tenth of the thickness.");
    }

    /** From the plumb line to the skin's normal [rad]. */
    private static double incidence(Bed bed) {
        return Math.atan(Math.hypot(Math.tan(bed.deadrise()), Math.tan(bed.slope())));
    }

    private static String untold(HullSkin skin, Bed bed) {
        ThicknessHere here = skin.thicknessAt(bed.x(), bed.y());
        if (here instanceof ThicknessHere.CoreSuspected) {
            return "A gauge reads much less than was laid up: that is a core, not a thin hull. Drill a pilot hole and look.";
        }
        return here instanceof ThicknessHere.Untold untold ? untold.reason() : "";
    }

    /** Of an in-hull mount: a skin that lets no sound through wherever it is, or of which or of whose beams nothing is told. */
    public static List<Check> settledInHull(Installation installation, Surroundings around) {
        if (around.skin().isEmpty()) {
            return List.of(OpenQuestion.SKIN.check());
        }
        Optional<Finding> refusal = refusal(installation, around);
        if (refusal.isPresent()) {
            return List.of(Check.of(refusal.get()));
        }
        return installation.details().beams().isEmpty() ? List.of(OpenQuestion.SKIN_LOSS.check()) : List.of();
    }

    private static Optional<Finding> refusal(Installation installation, Surroundings around) {
        return rule(around.skin().orElseThrow()).refusal(installation.details().beams());
    }

    private static InHullRule rule(HullSkin skin) {
        return new InHullRule(skin, SEA, InHullRule.LOSS);
    }

    static String kilohertz(SoundBeam beam) {
        return FixedDecimal.format(beam.frequency() / 1000, 0) + " kHz";
    }
}
