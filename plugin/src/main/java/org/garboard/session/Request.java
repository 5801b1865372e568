package org.garboard.session;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/**
 * One line of the host: {@code id TAB arguments}.
 *
 * <p>Arguments stand between blanks, or between double quotes; in quotes {@code \"}, {@code \\}, {@code \t} and {@code \n}
 * are a quote, a backslash, a tab and a line's end. Outside quotes a backslash is itself, as in the paths of some systems.
 *
 * @param id the host's name for it, by which replies are told apart
 * @param words the arguments
 */
record Request(String id, List<String> words) {
    /** The name in replies to lines that have none. */
    static final String NO_ID = "?";
    private static final Pattern ID = Pattern.compile("[A-Za-z0-9_.-]{1,64}");
    private static final int SHOWN = 60;

    Request {
        words = List.copyOf(words);
    }

    static Request of(String line) throws BadRequest {
        int tab = line.indexOf('\t');
        if (tab < 0) {
            throw new BadRequest(NO_ID, "\"" + shortened(line) + "\" is no request: no tab stands in it; write a name, a tab, the arguments");
        }
        String id = line.substring(0, tab);
        if (!ID.matcher(id).matches()) {
            throw new BadRequest(NO_ID, "\"" + shortened(id) + "\" names no request; write 1 to 64 letters, digits, points, hyphens");
        }
        return new Request(id, words(id, line.substring(tab + 1)));
    }

    private static List<String> words(String id, String text) throws BadRequest {
        List<String> words = new ArrayList<>();
        int at = 0;
        while (at < text.length()) {
            if (text.charAt(at) == ' ') {
                at++;
            } else {
                at = word(id, text, at, words);
            }
        }
        return words;
    }

    /** Reads one word; quoted and bare pieces may follow each other in it. */
    private static int word(String id, String text, int from, List<String> words) throws BadRequest {
        StringBuilder word = new StringBuilder();
        int at = from;
        while (at < text.length() && text.charAt(at) != ' ') {
            if (text.charAt(at) == '"') {
                at = quoted(id, text, at + 1, word);
            } else {
                word.append(text.charAt(at++));
            }
        }
        words.add(word.toString());
        return at;
    }

    private static int quoted(String id, String text, int from, StringBuilder word) throws BadRequest {
        int at = from;
        while (at < text.length() && text.charAt(at) != '"') {
            if (text.charAt(at) == '\\') {
                at++;
                word.append(escaped(id, text, at));
            } else {
                word.append(text.charAt(at));
            }
            at++;
        }
        if (at >= text.length()) {
            throw new BadRequest(id, "a quote is opened and not closed: \"" + shortened(text.substring(from)));
        }
        return at + 1;
    }

    private static char escaped(String id, String text, int at) throws BadRequest {
        String next = at < text.length() ? text.substring(at, at + 1) : "";
        return switch (next) {
            case "\"", "\\" -> next.charAt(0);
            case "t" -> '\t';
            case "n" -> '\n';
            default -> throw new BadRequest(id, "\"\\" + next + "\" stands in quotes; \\\", \\\\, \\t and \\n are known there");
        };
    }

    private static String shortened(String text) {
        return text.length() <= SHOWN ? text : text.substring(0, SHOWN) + "…";
    }
}
