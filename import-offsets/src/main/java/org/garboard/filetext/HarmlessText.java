package org.garboard.filetext;

import java.util.Locale;

/** Text with nothing in it that breaks a line or that a terminal would act on. */
public final class HarmlessText {

    private HarmlessText() {
    }

    /** Each letter that is not harmless by its number: {@code <U+000A>}. */
    public static String of(String text) {
        if (text.codePoints().allMatch(HarmlessText::isHarmless)) {
            return text;
        }
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().forEach(letter -> {
            if (isHarmless(letter)) {
                shown.appendCodePoint(letter);
            } else {
                shown.append(String.format(Locale.ROOT, "<U+%04X>", letter));
            }
        });
        return shown.toString();
    }

    /** Neither a control nor a sign that turns the direction of writing. */
    public static boolean isHarmless(int letter) {
        return switch (Character.getType(letter)) {
            case Character.CONTROL, Character.FORMAT, Character.LINE_SEPARATOR, Character.PARAGRAPH_SEPARATOR, Character.SURROGATE,
                Character.UNASSIGNED -> false;
            default -> true;
        };
    }
}
