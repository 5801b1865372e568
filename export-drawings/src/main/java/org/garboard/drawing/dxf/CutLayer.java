package org.garboard.drawing.dxf;

/** The layers of a cut file: what the machine does there. */
public enum CutLayer {
    /** Cut, the waste lies outside. */
    CUT_OUTER(1),
    /** Cut, the waste lies inside. */
    CUT_INNER(1),
    /** Drill on centre. */
    DRILL(5),
    /** Scribe only. */
    MARK(6);

    private final int colour;

    CutLayer(int colour) {
        this.colour = colour;
    }

    int colour() {
        return colour;
    }
}
