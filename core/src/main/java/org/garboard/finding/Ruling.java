package org.garboard.finding;

/**
 * A plain yes or no.
 *
 * @param name what was asked
 * @param answer YES or NO
 * @param source where the rule comes from
 * @param sentence the answer in words
 */
public record Ruling(String name, Answer answer, String source, String sentence) implements Finding {
    public Ruling {
        if (answer == Answer.NOT_KNOWN) {
            throw new IllegalArgumentException(name + ": a ruling is yes or no");
        }
    }

    public static Ruling allowed(String name, String source, String sentence) {
        return new Ruling(name, Answer.YES, source, sentence);
    }

    public static Ruling refused(String name, String source, String sentence) {
        return new Ruling(name, Answer.NO, source, sentence);
    }
}
