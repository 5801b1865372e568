package org.garboard.tablefile;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.garboard.offsets.SkinSurface.Covering;

/** The surfaces to which a heading may say its table is drawn. */
enum Surfaces {
    OUTSIDE("(?:(?:drawn|lines|offsets)(?: are)? )?(?:to )?(?:the )?outside of (?:the )?(?:skin|planking|plating|hull|shell|laminate)"),
    INSIDE_OF_PLANKING(inside("planking|planks?")),
    INSIDE_OF_PLATING(inside("plating|plates?")),
    INSIDE_OF_SKIN(inside("skin|shell|hull|laminate")),
    MOULDED("mou?lded|.*\\bto (?:the )?mou?lded\\b.*|.*\\bmou?lded (?:lines?|surface|offsets|dimensions)\\b.*");

    static final String KNOWN = "to outside of skin, to inside of planking, to inside of plating";
    static final String MOULDED_REFUSED = "does not say which surface that is (the inside in wood and metal, often the"
        + " outside in a mold); write \"to outside of skin\" if it is that, else \"to inside of planking\" or \"to inside of"
        + " plating\", with the thickness in the next cell";


    private final Pattern words;

    Surfaces(String words) {
        this.words = Pattern.compile(words, Pattern.CASE_INSENSITIVE);
    }

    private static String inside(String covering) {
        return "(?:.*\\b)?inside of (?:the )?(?:" + covering + ")\\b(?:[ ,:(]+([0-9].*?)\\)?(?: thick)?|.*)?";
    }

    /** The surface that a heading's cell speaks of. */
    static Optional<Surfaces> in(String text) {
        for (Surfaces surface : values()) {
            if (surface.words.matcher(text).matches()) {
                return Optional.of(surface);
            }
        }
        return Optional.empty();
    }

    /** The thickness that stands in the cell too; empty where none does. */
    String thickness(String text) {
        Matcher matcher = words.matcher(text);
        boolean told = matcher.matches() && matcher.groupCount() > 0 && matcher.group(1) != null;
        return told ? matcher.group(1) : "";
    }

    /** What lies between an inside and the water. */
    Optional<Covering> covering() {
        return switch (this) {
            case INSIDE_OF_PLANKING -> Optional.of(Covering.PLANKING);
            case INSIDE_OF_PLATING -> Optional.of(Covering.PLATING);
            case INSIDE_OF_SKIN -> Optional.of(Covering.SKIN);
            case OUTSIDE, MOULDED -> Optional.empty();
        };
    }
}
