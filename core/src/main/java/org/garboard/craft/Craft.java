package org.garboard.craft;

import java.util.List;
import java.util.Optional;

/**
 * The boat around the hull, as far as her running needs it.
 *
 * @param drive what drives her
 * @param weights what she weighs and where; empty where it is not told
 * @param speeds the speeds she is used at, slowest first, at least one
 * @param water that she is used in
 * @param band by how much her trim may differ from what is worked out
 * @param trials what was measured under way, slowest first; overrides what is worked out
 */
public record Craft(Drive drive, Optional<Weights> weights, List<RunningSpeed> speeds, HomeWater water, TrimBand band,
                    List<SeaTrial> trials) {
    public Craft {
        speeds = List.copyOf(speeds);
        trials = List.copyOf(trials);
        if (speeds.isEmpty()) {
            throw new IllegalArgumentException("a craft without speeds; at least one is needed");
        }
    }
}
