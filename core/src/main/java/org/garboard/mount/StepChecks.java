package org.garboard.mount;

import org.garboard.hull.Hull;
import org.garboard.mount.water.FlowAsked;
import org.garboard.units.FixedDecimal;

/** What every mount asks of the steps across the bottom. */
public final class StepChecks {

    /** Why nothing is said of a place abaft of the first step. */
    public static final String BEHIND = "Water behind a step is not worked out: how far aft it comes back to the bottom is not"
        + " known, and every place abaft of the first step may run in air.";

    private StepChecks() {
    }

    /** Ahead of the next step: by the limit, or by the face's length and the thickness of the layer, whichever is more. */
    public static Demand clear(Installation installation, Surroundings around) {
        Limit limit = installation.limits().of(LimitName.ROOM_TO_STEP);
        double face = installation.transducer().length();
        return Demand.atLeast("room ahead of a step", limit,
            bed -> bed.roomToStep() - Math.max(0, face + layer(installation, around, bed) - limit.value()),
            "The place lies well ahead of the step behind it.",
            "The place comes too near to the step behind it, or lies across it.").telling(bed -> {
                double more = face + layer(installation, around, bed) - limit.value();
                return more > 0 ? "Face and layer together are longer than the limit by " + FixedDecimal.format(1000 * more, 0)
                    + " mm, which is taken off." : "";
            });
    }

    private static double layer(Installation installation, Surroundings around, Bed bed) {
        return FlowAsked.atMostThick(around.water().speeds(), installation.limits(), bed.x(), bed.y());
    }

    /** Clear of the air behind the steps ahead of it, a beam and more abaft of where the water comes back, at every speed. */
    public static Demand behind(Hull hull, Installation installation, Surroundings around) {
        return Demand.atLeast("clear of the air behind steps", installation.limits().of(LimitName.BEHIND_STAGNATION),
            bed -> bed.x() <= hull.steps().get(0).x(bed.y()) ? Double.POSITIVE_INFINITY
                : FlowAsked.abaftOfAir(around.water().speeds(), bed.x(), bed.y()),
            "The place lies ahead of the steps, or well abaft of where the water comes back.",
            "The place lies in the air behind a step, or within a beam of where the water comes back.")
            .telling(bed -> Double.isNaN(FlowAsked.abaftOfAir(around.water().speeds(), bed.x(), bed.y())) ? BEHIND : "");
    }
}
