package org.garboard.drawing.svg;

/** Words from a user's files on their way into XML or HTML. */
public final class XmlText {
    private static final int NOT_A_CHARACTER = 0xFFFE;

    private XmlText() {
    }

    /** Leaves out what neither XML 1.0 nor HTML can hold; the platform's writer would write it raw. */
    public static String allowed(String words) {
        return words.codePoints().filter(XmlText::isAllowed)
                .collect(StringBuilder::new, StringBuilder::appendCodePoint, StringBuilder::append).toString();
    }

    private static boolean isAllowed(int letter) {
        boolean blank = letter == '\t' || letter == '\n' || letter == '\r';
        boolean half = letter >= Character.MIN_SURROGATE && letter <= Character.MAX_SURROGATE;
        boolean none = (letter & NOT_A_CHARACTER) == NOT_A_CHARACTER || letter >= 0xFDD0 && letter <= 0xFDEF;
        return blank || !Character.isISOControl(letter) && !half && !none;
    }
}
