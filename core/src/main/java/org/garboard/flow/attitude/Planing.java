package org.garboard.flow.attitude;

import java.util.List;
import org.garboard.flow.planing.Prism;
import org.garboard.flow.planing.PrismRun;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.units.Angle;

/** How a hull runs at a planing speed. */
public sealed interface Planing permits Planing.Running, Planing.ChinesDry, Planing.NotKnown {

    /**
     * She planes within the method.
     *
     * @param trim of the base line, positive bow-up
     * @param run of the prism of her mean beam and deadrise over the mean wetted length
     * @param line where the water meets her own bottom
     * @param water how the water that she has not yet disturbed lies to her
     * @param doubts what is to be said of it
     */
    record Running(Angle trim, PrismRun run, StagnationLine line, WaterSurface water, List<String> doubts) implements Planing {
        public Running {
            doubts = List.copyOf(doubts);
        }
    }

    /**
     * The water leaves the after end of the bottom inside the chines, where the method tells the line and nothing else.
     *
     * @param trim of the base line that was measured
     * @param prism of her mean beam and deadrise over the wetted keel
     * @param keelTrim of the keel over its wetted length
     * @param line where the water meets her bottom, out to as far as it is wet at its after end
     * @param water undisturbed
     */
    record ChinesDry(Angle trim, Prism prism, Angle keelTrim, StagnationLine line, WaterSurface water) implements Planing {
    }

    /** No figure. @param reason in words */
    record NotKnown(String reason) implements Planing {
    }
}
