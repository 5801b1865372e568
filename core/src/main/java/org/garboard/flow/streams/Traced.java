package org.garboard.flow.streams;

/** A streamline through a place, or why there is none. */
public sealed interface Traced permits Streamline, Traced.OffTheSkin {

    /** The place is not on the hull below the water. */
    record OffTheSkin(String reason) implements Traced {
    }
}
