package org.garboard.tablefile;

import java.util.Optional;
import java.util.regex.Pattern;

/** The surfaces to which a heading may say its table is drawn, and why some of them cannot be used. */
enum Surfaces {
    OUTSIDE("((drawn|lines|offsets)( are)? )?(to )?(the )?outside of (the )?(skin|planking|plating|hull|shell|laminate)",
        Optional.empty()),
    INSIDE_OF_PLANKING(".*\\binside of (the )?(planking|planks?|skin)\\b.*", Optional.of("is not read yet: only tables"
        + " to the outside of the skin are; loft the outside first, the planking's thickness square to the surface")),
    INSIDE_OF_PLATING(".*\\binside of (the )?(plating|plates?|shell)\\b.*", Optional.of("is not read yet: only tables"
        + " to the outside of the skin are; loft the outside first, the plating's thickness square to the surface")),
    MOULDED("mou?lded|.*\\bto (the )?mou?lded\\b.*|.*\\bmou?lded (lines?|surface|offsets|dimensions)\\b.*",
        Optional.of("does not say which surface that is (the inside in wood and metal, often the outside in a mold);"
            + " write \"to outside of skin\" if it is that"));

    private final Pattern words;
    private final Optional<String> refusal;

    Surfaces(String words, Optional<String> refusal) {
        this.words = Pattern.compile(words, Pattern.CASE_INSENSITIVE);
        this.refusal = refusal;
    }

    /** Why a table drawn to this surface is not taken. */
    Optional<String> refusal() {
        return refusal;
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
}
