package org.garboard.drawing;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

/** Breaks words into lines that fit a width. */
public final class Wrap {
    private static final Pattern BLANKS = Pattern.compile("\\s+");
    private static final long BLANK = LetterWidths.thousandths(" ");

    private Wrap() {
    }

    /**
     * Lines no wider than a width [mm] at a letter height [mm]; a word wider than the line is
     * broken between letters, nothing is left out.
     */
    public static List<String> lines(String words, double width, double height) {
        List<String> lines = new ArrayList<>();
        String line = "";
        // advances add up, so no line is measured twice
        long advance = 0;
        for (String word : BLANKS.split(words.strip())) {
            long ofWord = LetterWidths.thousandths(word);
            long longer = line.isEmpty() ? ofWord : advance + BLANK + ofWord;
            if (LetterWidths.extent(longer, height) <= width) {
                line = line.isEmpty() ? word : line + " " + word;
                advance = longer;
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line);
            }
            line = word;
            while (LetterWidths.extent(line, height) > width && line.codePointCount(0, line.length()) > 1) {
                int fitting = fittingLetters(line, width, height);
                lines.add(line.substring(0, fitting));
                line = line.substring(fitting);
            }
            advance = LetterWidths.thousandths(line);
        }
        if (!line.isEmpty()) {
            lines.add(line);
        }
        return lines;
    }

    private static int fittingLetters(String word, double width, double height) {
        int end = word.offsetByCodePoints(0, 1);
        while (end < word.length()) {
            int next = word.offsetByCodePoints(end, 1);
            if (LetterWidths.extent(word.substring(0, next), height) > width) {
                break;
            }
            end = next;
        }
        return end;
    }
}
