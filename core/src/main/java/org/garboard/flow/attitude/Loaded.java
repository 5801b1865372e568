package org.garboard.flow.attitude;

/** A hull under a load, or why that load cannot be hers. */
public sealed interface Loaded permits RunningHull, Loaded.Refused {

    /** Mass or centre of gravity is outside the boat. @param reason in words, with the value and the range */
    record Refused(String reason) implements Loaded {
    }
}
