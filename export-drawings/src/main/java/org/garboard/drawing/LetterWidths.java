package org.garboard.drawing;

/**
 * How wide a line of text runs in a common sans face, before any program has drawn it.
 *
 * <p>Advance widths in thousandths of the font size: Helvetica as in Adobe's published font
 * metrics, letter for letter those of Liberation Sans. The face that a viewer really takes may
 * run wider, hence {@link #RESERVE}.
 */
public final class LetterWidths {

    /** Capital height to font size of the face. */
    public static final double CAP_HEIGHT = 0.716;

    /** Extents are reckoned 15 % wide: our choice, because viewers replace a missing face by a wider one. */
    public static final double RESERVE = 1.15;

    /** Between words: wider than the face's own 278, because the stroke faces of CAD programs space them so. */
    private static final int SPACE = 480;

    /** What a blank to be filled in is made of: LibreCAD 2.2 draws it so wide; the face's own is 556. */
    private static final int RULE = 950;

    private static final int[] ASCII = {
        SPACE, 278, 355, 556, 556, 889, 667, 191, 333, 333, 389, 584, 278, 333, 278, 278,
        556, 556, 556, 556, 556, 556, 556, 556, 556, 556, 278, 278, 584, 584, 584, 556,
        1015, 667, 667, 722, 722, 667, 611, 778, 722, 278, 500, 667, 556, 833, 722, 778,
        667, 778, 722, 667, 611, 722, 667, 944, 667, 667, 611, 278, 278, 278, 469, RULE,
        333, 556, 556, 500, 556, 556, 278, 556, 556, 222, 222, 500, 222, 833, 556, 556,
        556, 556, 333, 500, 278, 556, 500, 722, 500, 500, 500, 334, 260, 334, 584};

    private static final String OTHERS = "°±×Øø–—²³·";
    private static final int[] OTHER_WIDTHS = {400, 584, 584, 778, 611, 556, 1000, 333, 333, 333};

    /** No Latin letter of the face is wider than an em, which also serves wider scripts. */
    private static final int UNKNOWN = 1000;

    private LetterWidths() {
    }

    /** Extent of a line of text [mm] at a capital height [mm], reserve included. */
    public static double extent(String words, double capHeight) {
        return extent(thousandths(words), capHeight);
    }

    /** The same of advances that were summed already. */
    static double extent(long thousandths, double capHeight) {
        return thousandths / 1000.0 * capHeight / CAP_HEIGHT * RESERVE;
    }

    /** Sum of the advances of a line's letters, in thousandths of the font's size. */
    static long thousandths(String words) {
        long thousandths = 0;
        int letter;
        for (int i = 0; i < words.length(); i += Character.charCount(letter)) {
            letter = words.codePointAt(i);
            thousandths += advance(letter);
        }
        return thousandths;
    }

    private static int advance(int letter) {
        if (letter >= ' ' && letter - ' ' < ASCII.length) {
            return ASCII[letter - ' '];
        }
        int other = OTHERS.indexOf(letter);
        return other >= 0 ? OTHER_WIDTHS[other] : UNKNOWN;
    }
}
