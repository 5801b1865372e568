package org.garboard.drawing.template;

/** What a template shows, which way it lies on the paper, and what it is laid on. */
public enum TemplateLay {
    ON_HULL("OUTSIDE OF HULL, bow to the right, starboard up.", "Lay it on the outside, this side up.",
        "Mark out first (sheet 2). Lay the template on the marks: its cross on the place, its arrow to the bow."),
    IN_HULL("INSIDE OF HULL, bow to the right, port up.", "Lay it inside, this side up.",
        "Find the place inside from two sides, or through a feature seen from both. Lay the template with its cross on it, its arrow to the bow."),
    ON_TRANSOM("TRANSOM SEEN FROM AFT, starboard to the right.", "Lay it on the transom, this side to you.",
        "Mark out first (sheet 2). Lay the template on the transom, its plumb line through the place, its line of the edge on the edge."),
    ROUND_WALL("WALL UNROLLED, its outside to you: bow in the middle, starboard left of it.", "Wrap it round the ring, this side out.",
        "Wrap it round the ring, its brim even with the ring's, its ends together at the after end; mark the foot."),
    ON_BLANK("PART AS SEEN FROM OUTSIDE THE HULL, bow to the right, starboard up.", "Lay it on the blank, this side up.",
        "Lay the template on the blank, its arrow to the end that goes forward.");

    private final String seen;
    private final String laid;
    private final String step;

    TemplateLay(String seen, String laid, String step) {
        this.seen = seen;
        this.laid = laid;
        this.step = step;
    }

    String seen() {
        return seen;
    }

    /** For the foot of every page. */
    String laid() {
        return laid;
    }

    /** For the page that says what to do. */
    String step() {
        return step;
    }
}
