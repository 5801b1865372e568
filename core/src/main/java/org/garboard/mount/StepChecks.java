package org.garboard.mount;

/** What every mount asks of the steps across the bottom. */
public final class StepChecks {

    /** Why nothing is said of a place abaft of the first step. */
    public static final String BEHIND = "Water behind a step is not worked out: how far aft it comes back to the bottom is not"
        + " known, and every place abaft of the first step may run in air.";

    private StepChecks() {
    }

    /** Asked on a bottom that has steps. */
    public static Demand clear(Limits limits) {
        return Demand.atLeast("room ahead of a step", limits.of(LimitName.ROOM_TO_STEP), Bed::roomToStep,
            "The place lies well ahead of the first step, in water that no step has broken.",
            "The place comes too near to the step behind it, or lies across it.").telling(bed -> Double.isNaN(bed.roomToStep()) ? BEHIND : "");
    }
}
