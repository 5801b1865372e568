package org.garboard.drawing;

/** Which point of a line of text, on its base line, is placed. */
public enum Anchor {
    LEFT(0), MIDDLE(0.5), RIGHT(1);

    private final double before;

    Anchor(double before) {
        this.before = before;
    }

    /** Share of the text that runs before the anchor. */
    public double before() {
        return before;
    }
}
