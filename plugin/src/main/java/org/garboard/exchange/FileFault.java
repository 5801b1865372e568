package org.garboard.exchange;

import org.garboard.filetext.HarmlessText;

/**
 * Something in a file that has to be put right.
 *
 * @param file name of the file
 * @param line counted from 1
 * @param column counted from 1
 * @param words what stands there, what was expected, what would work
 */
public record FileFault(String file, int line, int column, String words) {
    /** What a parser quotes from the file may hold anything. */
    public FileFault {
        words = HarmlessText.of(words);
    }

    /** One line for people, and for editors that jump to {@code file:line:column}. */
    public String message() {
        return file + ":" + line + ":" + column + ": " + words;
    }
}
