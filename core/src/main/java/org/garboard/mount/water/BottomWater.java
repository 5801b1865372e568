package org.garboard.mount.water;

import java.util.List;
import java.util.Optional;
import org.garboard.flow.shadow.EveryWake;
import org.garboard.flow.streams.SweepDown;

/**
 * The water along one bottom at every speed of the boat, and what is on it.
 *
 * @param speeds slowest first; empty where nothing is told of her running
 * @param wakes of what is listed on the bottom, at the speeds at which they are known
 * @param untraced the speeds afloat at which no streamlines are known, and why, a sentence; empty where they are
 * @param sweep what comes down from the surface at the bow; of hulls that never plane
 */
public record BottomWater(List<WaterAtSpeed> speeds, List<Wakes> wakes, String untraced, Optional<SweepDown> sweep) {
    /** Where nothing is told of her running. */
    public static final BottomWater UNTOLD = new BottomWater(List.of(), List.of(), "", Optional.empty());

    /** The wakes of each feature at whatever speed, one figure for it, in the order in which they are first thrown. */
    public List<EveryWake> wakesTogether() {
        return EveryWake.of(wakes.stream().flatMap(each -> each.shadows().stream()).toList());
    }

    public BottomWater {
        speeds = List.copyOf(speeds);
        wakes = List.copyOf(wakes);
    }
}
