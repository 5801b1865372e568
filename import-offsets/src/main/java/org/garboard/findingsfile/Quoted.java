package org.garboard.findingsfile;

import org.garboard.filetext.HarmlessText;

/** Text of a file as messages show it: short and harmless. */
final class Quoted {
    private static final int MOST = 60;

    private Quoted() {
    }

    static String of(String text) {
        boolean cut = text.codePointCount(0, text.length()) > MOST;
        String beginning = cut ? text.substring(0, text.offsetByCodePoints(0, MOST)) : text;
        return "\"" + HarmlessText.of(beginning) + (cut ? "…\"" : "\"");
    }
}
