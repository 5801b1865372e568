package org.garboard.flow.shadow;

/** The shadow of a feature, or why it throws none. */
public sealed interface Cast permits Shadow, Cast.None {

    /**
     * @param feature that was asked for
     * @param reason why no water of the bottom comes from it
     */
    record None(String feature, String reason) implements Cast {
    }
}
