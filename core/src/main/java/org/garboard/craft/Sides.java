package org.garboard.craft;

/** On which side of the boat something is. */
public enum Sides {
    PORT("port"),
    STARBOARD("starboard"),
    BOTH("both sides");

    private final String words;

    Sides(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }

    /** Whether it is on one of the sides that another stands for. */
    public boolean meets(Sides other) {
        return this == other || this == BOTH || other == BOTH;
    }
}
