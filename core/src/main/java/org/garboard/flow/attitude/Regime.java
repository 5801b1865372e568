package org.garboard.flow.attitude;

/** How a boat goes at a speed, or which limit of the methods she meets there. */
public enum Regime {
    DISPLACEMENT("displacement"),
    /** Faster than she floats as at rest, slower than the planing method begins. */
    BETWEEN("between displacement and planing"),
    PLANING("planing"),
    /** On more than one planing surface. */
    STEPPED("stepped"),
    /** Fast enough to plane, and the planing method does not hold. */
    OUTSIDE("planing, outside the method");

    private final String words;

    Regime(String words) {
        this.words = words;
    }

    public String words() {
        return words;
    }
}
