package org.garboard.tablefile;

import java.util.Locale;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;

/** The words by which a table's rows and columns are known; letter case does not matter. */
final class Labels {
    /** Also used to find the mark between cells, before there are cells. */
    static final String STATION = "(?i:sta(?:tion)?s?\\.?(?: no\\.?| number)?)";

    /** What a reader is told when a label is none of these. */
    static final String KNOWN = "Sheer, Chine, Keel, Half-siding, Top of keel, Half-siding at rabbet, Keel bottom, Strake inner and Strake outer, WL or Waterline with its height,"
        + " Buttock with its distance, Distance from 0, Distance from aft, x";

    private static final Pattern STATION_ONLY = Pattern.compile(STATION);
    private static final Pattern HEIGHTS = words("heights?( above (the )?base ?(line)?)?");
    private static final Pattern HALF_BREADTHS =
        words("half[- ]?breadths?( from (the )?(cent(re|er) ?line|cl))?");
    private static final Pattern SHEER = words("sheer( ?line)?");
    private static final Pattern KEEL = words("(keel|rabbet|profile)( ?line)?");
    private static final Pattern HALF_SIDING = words("half[- ]?siding( of (the )?keel)?");
    private static final Pattern RABBET = words("half[- ]?siding at (the )?rabbet");
    private static final Pattern KEEL_BOTTOM = words("(half[- ]?siding at (the )?)?(keel bottom|bottom of (the )?keel)");
    private static final Pattern STRAKE_INNER = words(".*strake.*[ ,]inner( edge)?");
    private static final Pattern STRAKE_OUTER = words(".*strake.*[ ,]outer( edge)?");
    private static final Pattern KEEL_TOP = words("top of (the )?(box )?keel");
    private static final Pattern CHINE = words("(.* )?chine( ?line)?( .*)?");
    private static final Pattern WATERLINE = words("(?:w\\.?l\\.?|water ?line)(?: *([0-9.,].*)| +(.*))?");
    private static final Pattern BUTTOCK = words("butt(?:ock|\\.)?(?: *([0-9.,].*)| +(.*))?");

    private Labels() {
    }

    private static Pattern words(String regex) {
        return Pattern.compile(regex, Pattern.CASE_INSENSITIVE);
    }

    static boolean isStation(String text) {
        return STATION_ONLY.matcher(text).matches();
    }

    static boolean isDistance(String text) {
        return Measured.isDistance(text);
    }

    static Optional<Measure> block(String text) {
        if (HEIGHTS.matcher(text).matches()) {
            return Optional.of(Measure.HEIGHT);
        }
        return HALF_BREADTHS.matcher(text).matches() ? Optional.of(Measure.HALF_BREADTH) : Optional.empty();
    }

    /**
     * What a line's label says.
     *
     * @param level the length behind WL or Buttock, as it stands; empty for the others
     */
    record Line(LineKind kind, String level) {
    }

    /** The line a label names, if it is one that is known. */
    static Optional<Line> line(String text) {
        Matcher waterline = WATERLINE.matcher(text);
        if (waterline.matches()) {
            return Optional.of(new Line(LineKind.WATERLINE, level(waterline)));
        }
        Matcher buttock = BUTTOCK.matcher(text);
        if (buttock.matches()) {
            return Optional.of(new Line(LineKind.BUTTOCK, level(buttock)));
        }
        return named(text).map(kind -> new Line(kind, ""));
    }

    private static String level(Matcher label) {
        String close = label.group(1);
        String spaced = label.group(2);
        return close != null ? close : spaced != null ? spaced : "";
    }

    private static Optional<LineKind> named(String text) {
        if (SHEER.matcher(text).matches()) {
            return Optional.of(LineKind.SHEER);
        }
        if (KEEL.matcher(text).matches()) {
            return Optional.of(LineKind.KEEL);
        }
        if (HALF_SIDING.matcher(text).matches()) {
            return Optional.of(LineKind.HALF_SIDING);
        }
        if (RABBET.matcher(text).matches()) {
            return Optional.of(LineKind.RABBET);
        }
        if (KEEL_BOTTOM.matcher(text).matches()) {
            return Optional.of(LineKind.KEEL_BOTTOM);
        }
        if (STRAKE_INNER.matcher(text).matches()) {
            return Optional.of(LineKind.STRAKE_INNER);
        }
        if (STRAKE_OUTER.matcher(text).matches()) {
            return Optional.of(LineKind.STRAKE_OUTER);
        }
        if (KEEL_TOP.matcher(text).matches()) {
            return Optional.of(LineKind.KEEL_TOP);
        }
        return CHINE.matcher(text).matches() ? Optional.of(LineKind.CHINE) : Optional.empty();
    }

    /** One spelling for labels that differ in case and spaces only. */
    static String key(String text) {
        return text.toLowerCase(Locale.ROOT).replaceAll("\\s+", " ");
    }
}
