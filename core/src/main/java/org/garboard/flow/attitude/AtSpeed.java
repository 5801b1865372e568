package org.garboard.flow.attitude;

import java.util.List;
import org.garboard.craft.RunningSpeed;

/**
 * One of a craft's speeds.
 *
 * @param speed as told
 * @param middle under the mean of light and full, at the trim that is worked out or was measured
 * @param ends of the band of load and trim, each an answer of its own
 */
public record AtSpeed(RunningSpeed speed, Attitude middle, List<End> ends) {
    public AtSpeed {
        ends = List.copyOf(ends);
    }

    /**
     * An end of the band.
     *
     * @param name light or full, and which way the trim
     * @param mass [kg]; NaN where it is not told
     */
    public record End(String name, double mass, Attitude attitude) {
    }
}
