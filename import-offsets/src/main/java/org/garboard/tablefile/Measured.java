package org.garboard.tablefile;

import java.util.Optional;
import java.util.regex.Pattern;

/** From which end of the boat stations are numbered and their distances measured. */
enum Measured {
    FROM_FORWARD("(?:forward|fwd|the bow|bow|the stem|stem|f\\.?p\\.?|(?:the )?forward perpendicular)", "aft"),
    FROM_AFT("(?:aft|the stern|stern|the transom|transom|a\\.?p\\.?|(?:the )?after perpendicular)", "(?:forward|fwd)");

    /** How a heading begins that says it: "Stations from". */
    private static final Pattern HEADING = Pattern.compile(
        "stations?(?: are)?(?: numbered| measured| numbered and measured| counted)? from\\b.*", Pattern.CASE_INSENSITIVE);
    private static final Pattern ASIDE = Pattern.compile(
        ".*\\b(?:stations?|distances?)\\b.*\\bfrom " + FROM_AFT.datum + "\\b.*", Pattern.CASE_INSENSITIVE);
    /** "Distance from 0" and "x", which leave it to the heading. */
    private static final Pattern UNSAID = Pattern.compile("x|distances?(?: (?:of|from) (?:station )?0)?", Pattern.CASE_INSENSITIVE);

    private final String datum;
    private final Pattern told;
    private final Pattern distance;

    /**
     * @param datum words for its end of the boat
     * @param grows the way in which distances from there grow
     */
    Measured(String datum, String grows) {
        this.datum = datum;
        this.told = Pattern.compile(".*? from " + datum + "(?:[ ,.].*)?", Pattern.CASE_INSENSITIVE);
        this.distance = Pattern.compile("distances?(?: from " + datum + "| " + grows + "(?: (?:of|from) (?:(?:station )?0|"
            + datum + "))?)", Pattern.CASE_INSENSITIVE);
    }

    static boolean isHeading(String text) {
        return HEADING.matcher(text).matches();
    }

    /** What a heading says, "Stations from aft". */
    static Optional<Measured> heading(String text) {
        return FROM_FORWARD.told.matcher(text).matches() ? Optional.of(FROM_FORWARD)
            : FROM_AFT.told.matcher(text).matches() ? Optional.of(FROM_AFT) : Optional.empty();
    }

    /** Whether a note says in passing that stations count from aft. */
    static boolean isAsideFromAft(String text) {
        return ASIDE.matcher(text).matches();
    }

    static boolean isDistance(String text) {
        return UNSAID.matcher(text).matches() || distance(text).isPresent();
    }

    /** What the label of the distances says by itself, "Distance from AP", "Distance forward of 0". */
    static Optional<Measured> distance(String text) {
        for (Measured measured : values()) {
            if (measured.distance.matcher(text).matches()) {
                return Optional.of(measured);
            }
        }
        return Optional.empty();
    }
}
