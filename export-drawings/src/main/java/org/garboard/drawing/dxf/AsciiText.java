package org.garboard.drawing.dxf;

import java.util.regex.Pattern;

/**
 * Text as a DXF of these versions can hold it: ASCII, with the signs of degree, diameter and
 * plus-minus by their codes, common typographic signs by plain ones, anything else by number.
 */
final class AsciiText {

    /**
     * A percent sign that would begin a code, by itself or with one that is written for the next letter. A blank keeps the two
     * apart: of the code for the sign itself, three of them, not every reader knows.
     */
    private static final Pattern PERCENT = Pattern.compile("%(?=[%°Ø±])");
    /** A backslash that would begin a letter's number; other codes with one are not read in a text of one line. */
    private static final Pattern NUMBERED = Pattern.compile("\\\\(?=[UuMm]\\+)");
    private static final String BACKSLASH = "\\\\U+005C";

    private AsciiText() {
    }

    static String of(String words) {
        StringBuilder ascii = new StringBuilder(words.length());
        NUMBERED.matcher(PERCENT.matcher(words).replaceAll("% ")).replaceAll(BACKSLASH).codePoints().forEach(letter -> append(ascii, letter));
        return ascii.toString();
    }

    private static void append(StringBuilder ascii, int letter) {
        switch (letter) {
            case '°' -> ascii.append("%%d");
            case 'Ø' -> ascii.append("%%c");
            case '±' -> ascii.append("%%p");
            case '×' -> ascii.append('x');
            case '–', '—', '−' -> ascii.append('-');
            case '‘', '’', '′' -> ascii.append('\'');
            case '“', '”', '″' -> ascii.append('"');
            case '²' -> ascii.append('2');
            case '³' -> ascii.append('3');
            case '·' -> ascii.append('.');
            case '…' -> ascii.append("...");
            case '^' -> ascii.append("^ ");
            default -> appendOther(ascii, letter);
        }
    }

    /** The number code has four digits: a letter beyond them is written as its two halves. */
    private static void appendOther(StringBuilder ascii, int letter) {
        if (letter < ' ' || letter == 0x7f) {
            ascii.append(' ');
        } else if (letter < 0x7f) {
            ascii.append((char) letter);
        } else {
            for (char half : Character.toChars(letter)) {
                ascii.append("\\U+");
                for (int shift = 12; shift >= 0; shift -= 4) {
                    ascii.append(Character.toUpperCase(Character.forDigit(half >> shift & 0xf, 16)));
                }
            }
        }
    }
}
