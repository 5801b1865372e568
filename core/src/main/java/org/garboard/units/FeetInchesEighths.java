package org.garboard.units;

import java.util.regex.Pattern;
import org.garboard.units.LengthReading.Unreadable;

/**
 * The notation of printed tables of offsets: {@code 2-3-4} is 2 ft 3 4/8 in; a trailing {@code +}
 * adds a sixteenth of an inch and a trailing {@code -} takes one off; a leading {@code -} is the sign.
 *
 * <p>Counted in whole sixteenths: n16 = 192 ft + 16 in + 2 eighths &plusmn; 1.
 *
 * @see "The notation as boatbuilding textbooks use it; from memory, no page at hand"
 */
final class FeetInchesEighths {
    private static final int SIXTEENTHS_PER_FOOT = 192;
    private static final int SIXTEENTHS_PER_INCH = 16;
    private static final Pattern PARTS = Pattern.compile("[0-9]+-[0-9]+-[0-9]+");
    private static final int MOST_DIGITS = 6;

    private FeetInchesEighths() {
    }

    /** A dash or plus behind the sign can only be this notation. */
    static boolean isMeantIn(String text) {
        return text.indexOf('-', 1) > 0 || text.indexOf('+', 1) > 0;
    }

    static LengthReading read(String text) {
        char first = text.charAt(0);
        int sign = first == '-' ? -1 : 1;
        String parts = first == '-' || first == '+' ? text.substring(1) : text;
        int sixteenth = 0;
        if (parts.endsWith("+") || parts.endsWith("-") && parts.chars().filter(c -> c == '-').count() >= 3) {
            sixteenth = parts.endsWith("+") ? 1 : -1;
            parts = parts.substring(0, parts.length() - 1);
        }
        if (!PARTS.matcher(parts).matches()) {
            return new Unreadable(shapeFault(parts));
        }
        String[] numbers = parts.split("-");
        if (numbers[0].length() > MOST_DIGITS) {
            return new Unreadable("has more than " + MOST_DIGITS + " digits of feet; write so many at most");
        }
        if (above(numbers[1], 11)) {
            return new Unreadable("has " + numbers[1] + " inches; inches go from 0 to 11");
        }
        if (above(numbers[2], 7)) {
            return new Unreadable("has " + numbers[2] + " eighths; eighths go from 0 to 7");
        }
        long n16 = (long) SIXTEENTHS_PER_FOOT * Integer.parseInt(numbers[0])
            + SIXTEENTHS_PER_INCH * Integer.parseInt(numbers[1])
            + 2 * Integer.parseInt(numbers[2])
            + sixteenth;
        return new Length(sign * metres(n16), metres(sixteenth == 0 ? 2 : 1));
    }

    private static boolean above(String digits, int most) {
        return digits.length() > 2 || Integer.parseInt(digits) > most;
    }

    private static String shapeFault(String parts) {
        String wanted = "; write feet-inches-eighths as in 2-3-4, a sixteenth more as 2-3-4+";
        if (parts.contains("/")) {
            return "has a fraction" + wanted;
        }
        if (!parts.matches("[0-9-]*")) {
            return "is not a length; write a number such as 1.28 m, or 4-2-3 (ft-in-eighths)";
        }
        String[] numbers = parts.split("-", -1);
        if (numbers.length != 3) {
            return "has " + numbers.length + (numbers.length == 1 ? " part" : " parts") + wanted;
        }
        String missing = numbers[0].isEmpty() ? "feet" : numbers[1].isEmpty() ? "inches" : "eighths";
        return "has no " + missing + wanted;
    }

    /** Sixteenths of an inch in metres; the division rounds once, n16 being exact. */
    private static double metres(long n16) {
        return n16 * 15_875L / 1e7;
    }

    /** A length to the nearest eighth. */
    static String print(double metres) {
        long eighths = Math.round(Math.abs(metres) / metres(2));
        String sign = metres < 0 && eighths > 0 ? "-" : "";
        return sign + eighths / 96 + "-" + eighths / 8 % 12 + "-" + eighths % 8;
    }
}
