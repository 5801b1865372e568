package org.garboard.mount;

/**
 * A question that decides over a place and that is not answered from the table of offsets. It stands
 * on the sheet as NOT KNOWN, to be looked at before cutting.
 */
public enum OpenQuestion {
    WET("wet at every speed",
        "Look under way, or at the spray marks: the place must stay in solid water at every speed and in turns."),
    FEATURES("strakes and fittings",
        "Look at the bottom: the job does not list what is there. No strake, intake, anode, drain or other fitting may"
            + " lie under the body or within 50 mm of it."),
    WAKE("wake shadow",
        "Look ahead of the place: no strake end, step, intake, scoop, tunnel, anode, drain or fitting may stand"
            + " in the water that reaches it."),
    LAYER("boundary layer",
        "Look at length and speed: on a long or fast boat the slow water next to the skin may be too thick here."),
    CAVITATION("cavitation",
        "Look at top speed: whether the face begins to cavitate has not been worked out."),
    SKIN("skin",
        "Look from inside, drill a pilot hole: solid or cored, and how thick. Core must come out around the hole."),
    SKIN_LOSS("loss through the skin",
        "Ask the maker for frequencies and beam widths: without them nobody can tell what comes through the skin."),
    ROOM_INSIDE("room inside",
        "Look inside: stringers, bulkheads, engine, tanks. A fuel tank or fuel line behind the skin rules the"
            + " place out."),
    STRUCTURE("room inside and structure",
        "Look inside: no pocket may cut keelson, floors, engine bearers or keel bolts, and a fuel tank or fuel"
            + " line behind the skin rules the place out."),
    KICK_UP("room to kick up",
        "Look at the transom: a body that is hit swings up about its bracket. No platform, ladder, exhaust or leg, steered and"
            + " tilted whichever way, may stand where it swings to."),
    HANDLING("slings, blocking and trailer",
        "Look at how the boat is lifted and set down: no sling, block, bunk or roller may bear on the place.");

    private final String check;
    private final String sentence;

    OpenQuestion(String check, String sentence) {
        this.check = check;
        this.sentence = sentence;
    }

    /** Name of the check. */
    public String words() {
        return check;
    }

    public Check check() {
        return new Check(check, Check.Sense.KNOWN_ONLY, Double.NaN, Double.NaN, "", Double.NaN,
            Verdict.NOT_KNOWN, "common practice, no source", sentence);
    }
}
