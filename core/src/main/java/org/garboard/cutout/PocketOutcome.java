package org.garboard.cutout;

/** A pocket, or why it cannot be built. */
public sealed interface PocketOutcome {

    /** It can be built. */
    record Built(Pocket pocket) implements PocketOutcome {
    }

    /**
     * It cannot.
     *
     * @param reason with the figure that fails
     * @param remedy the nearest value that works, in words
     */
    record Refused(String reason, String remedy) implements PocketOutcome {
    }
}
