package org.garboard.craft;

import java.util.List;
import java.util.Optional;

/**
 * What a maker tells of a transducer beside its outside. What is missing is not known.
 *
 * @param beams one for each frequency; empty where they are not told
 * @param housing what it is made of
 * @param weight [kg]
 * @param stemLength of the thread, from the flange that beds on the skin [m]
 * @param connector diameter of the plug on its cable [m]
 */
public record TransducerDetails(List<SoundBeam> beams, Optional<Housing> housing, Optional<Double> weight,
                                Optional<Double> stemLength, Optional<Double> connector) {
    public static final TransducerDetails UNTOLD =
        new TransducerDetails(List.of(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty());

    /** Of a cable whose plug nobody tells. */
    public TransducerDetails(List<SoundBeam> beams, Optional<Housing> housing, Optional<Double> weight, Optional<Double> stemLength) {
        this(beams, housing, weight, stemLength, Optional.empty());
    }

    public TransducerDetails {
        beams = List.copyOf(beams);
    }

    /** [Hz], in the order of the job. */
    public List<Double> frequencies() {
        return beams.stream().map(SoundBeam::frequency).toList();
    }
}
