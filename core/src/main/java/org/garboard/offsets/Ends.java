package org.garboard.offsets;

import java.util.List;
import java.util.Optional;

/**
 * Where the lengths of a hull end, as far as they do not end square across.
 *
 * @param steps the lines of steps that are swept or notched
 * @param transom the transom, if it is raked or round
 * @param stem the stem, if it stands forward of the first station
 */
public record Ends(List<StepLine> steps, Optional<TransomLine> transom, Optional<StemLine> stem) {
    /** Every step straight across at its stations, the bow at the first one and the transom at the last. */
    public static final Ends SQUARE = new Ends(List.of(), Optional.empty(), Optional.empty());

    /** Square across at the first station. */
    public Ends(List<StepLine> steps, Optional<TransomLine> transom) {
        this(steps, transom, Optional.empty());
    }

    public Ends {
        steps = List.copyOf(steps);
    }

    /** The line of the step whose after face is a station, if the table gives one. */
    public Optional<StepLine> step(int station) {
        return steps.stream().filter(step -> step.station() == station).findFirst();
    }
}
