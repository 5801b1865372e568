package org.garboard.exchange;

import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * One message of the schema validator of the Java runtime, taken apart: the code of the rule
 * that is broken (XML Schema Part 1, appendix B.1; Part 2, appendix C) and its arguments.
 *
 * @param code of the rule, "cvc-complex-type.2.4.a"
 * @param text behind the code, in English
 */
record SchemaMessage(String code, String text) {
    private static final Pattern SHAPE = Pattern.compile("(cvc-[A-Za-z0-9.-]+): (.*)", Pattern.DOTALL);
    private static final Pattern QUOTED = Pattern.compile("'([^']*)'");
    private static final Pattern NAME = Pattern.compile("(?:\"[^\"]*\":)?([\\w.-]+)");

    static SchemaMessage of(String message) {
        Matcher shape = SHAPE.matcher(message);
        return shape.matches() ? new SchemaMessage(shape.group(1), shape.group(2)) : new SchemaMessage("", message);
    }

    /** True when this only says what is wrong with a value; whose value it is, the next one says. */
    boolean isAboutValue() {
        return code.startsWith("cvc-datatype-valid") || code.endsWith("-valid");
    }

    boolean namesBadAttribute() {
        return code.equals("cvc-attribute.3");
    }

    boolean namesBadContent() {
        return code.equals("cvc-type.3.1.3") || code.equals("cvc-complex-type.2.2");
    }

    boolean isUnexpectedElement() {
        return code.startsWith("cvc-complex-type.2.4") && !code.endsWith(".b");
    }

    /** True when elements are missing at the end of another. */
    boolean isIncomplete() {
        return code.equals("cvc-complex-type.2.4.b");
    }

    /** The names that were expected, in the schema's order. */
    List<String> expected() {
        Matcher list = Pattern.compile("One of '\\{(.*)\\}'").matcher(text);
        return list.find()
            ? NAME.matcher(list.group(1)).results().map(found -> found.group(1)).toList()
            : List.of();
    }

    /** The quoted argument of that index. */
    String argument(int index) {
        return QUOTED.matcher(text).results().map(found -> found.group(1)).skip(index).findFirst().orElse("");
    }

    /** What is wrong with a value and what would be right, the value first. */
    String valueWords() {
        String value = value();
        String quoted = value.isEmpty() ? "nothing" : "\"" + value + "\"";
        if (code.startsWith("cvc-enumeration")) {
            List<String> known = enumeration();
            String hint = Spelling.meant(value, known).map(word -> "; did you mean " + word + "?").orElse("");
            return quoted + " stands there; expected " + either(known) + hint;
        }
        if (code.startsWith("cvc-minLength")) {
            return "nothing stands there; expected some text";
        }
        if (code.startsWith("cvc-maxLength")) {
            return quoted + " has " + value.length() + " characters; at most " + numberAfter("maxLength") + " may stand there";
        }
        if (text.contains("'decimal'")) {
            return quoted + " is not a number" + numberHint(value);
        }
        if (text.contains("'date'") || code.startsWith("cvc-pattern")) {
            return quoted + " is not a date; write year-month-day, such as 2026-03-14";
        }
        return quoted + " cannot stand there";
    }

    private static String numberHint(String value) {
        if (value.matches("[+-]?[0-9]+,[0-9]+")) {
            return "; write a decimal point: " + value.replace(',', '.');
        }
        if (value.matches("[0-9]+-[0-9]+-[0-9]+[+-]?")) {
            return "; write decimals: the length 2-3-4 is 27.5 with unit=\"in\"";
        }
        return "; write decimals with a point, such as 12.5, and the unit in the attribute unit";
    }

    private String value() {
        Matcher value = Pattern.compile("'(.*?)'(?: with length| is not)", Pattern.DOTALL).matcher(text);
        return value.find() ? value.group(1).strip() : "";
    }

    private List<String> enumeration() {
        Matcher list = Pattern.compile("enumeration '\\[(.*)\\]'").matcher(text);
        return list.find() ? List.of(list.group(1).split(", ")) : List.of();
    }

    private String numberAfter(String facet) {
        Matcher number = Pattern.compile(facet + " '([0-9]+)'").matcher(text);
        return number.find() ? number.group(1) : "so many";
    }

    /** The text with nothing of the validator's own marks, for rules that our schemas cannot break. */
    String plainText() {
        return QUOTED.matcher(text).replaceAll(found -> Matcher.quoteReplacement(bare(found)));
    }

    private static String bare(MatchResult quoted) {
        return NAME.matcher(quoted.group(1)).results().map(name -> name.group(1)).collect(Collectors.joining(", "));
    }

    private static String either(List<String> words) {
        return words.size() == 1 ? words.get(0)
            : String.join(", ", words.subList(0, words.size() - 1)) + " or " + words.get(words.size() - 1);
    }
}
