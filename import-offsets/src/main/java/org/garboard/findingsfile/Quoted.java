package org.garboard.findingsfile;

import java.util.Locale;

/** Text of a file as messages show it: short, and with nothing in it that a terminal would act on. */
final class Quoted {
    private static final int MOST = 60;

    private Quoted() {
    }

    static String of(String text) {
        StringBuilder shown = new StringBuilder("\"");
        text.codePoints().limit(MOST).forEach(letter -> {
            if (isHarmless(letter)) {
                shown.appendCodePoint(letter);
            } else {
                shown.append(String.format(Locale.ROOT, "<U+%04X>", letter));
            }
        });
        return shown.append(text.codePointCount(0, text.length()) > MOST ? "…\"" : "\"").toString();
    }

    /** Neither a control nor a sign that turns the direction of writing. */
    static boolean isHarmless(int letter) {
        return switch (Character.getType(letter)) {
            case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE,
                Character.UNASSIGNED -> false;
            default -> true;
        };
    }
}
