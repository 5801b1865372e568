package org.garboard.finding;

/**
 * Not known, and so never met: to be looked at before cutting.
 *
 * @param name what was asked
 * @param source where the rule comes from
 * @param sentence what is missing and how to find it out
 */
public record NotKnown(String name, String source, String sentence) implements Finding {
    @Override
    public Answer answer() {
        return Answer.NOT_KNOWN;
    }
}
