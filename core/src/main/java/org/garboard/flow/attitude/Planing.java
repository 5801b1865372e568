package org.garboard.flow.attitude;

import org.garboard.flow.planing.PrismRun;
import org.garboard.units.Angle;

/** How a hull runs at a planing speed. */
public sealed interface Planing permits Planing.Running, Planing.NotKnown {

    /**
     * She planes within the method.
     *
     * @param trim of the base line, positive bow-up
     * @param run of the prism of her mean beam and deadrise over the mean wetted length
     * @param line where the water meets her own bottom
     */
    record Running(Angle trim, PrismRun run, StagnationLine line) implements Planing {
    }

    /** No figure. @param reason in words */
    record NotKnown(String reason) implements Planing {
    }
}
