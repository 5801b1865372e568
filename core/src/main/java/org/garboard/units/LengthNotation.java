package org.garboard.units;

import java.math.BigDecimal;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.garboard.units.LengthReading.Unreadable;

/**
 * Reads lengths as yards write them: decimals with point or comma, {@code 450 mm}, {@code 1.2 m},
 * and feet-inches-eighths, {@code 2-3-4+}.
 *
 * <p>A number without a unit is read in the unit that was agreed beforehand, say in the heading of
 * a table; where none was agreed it is unreadable, except zero, which is zero in every unit.
 */
public final class LengthNotation {
    private static final Pattern DECIMAL = Pattern.compile("([+-]?)([0-9]*)([.,][0-9]*)?\\s*([^0-9.,+\\s-].*)?");
    private static final Pattern TWO_MARKS = Pattern.compile("([+-]?[0-9]+)([.,])([0-9]+)([.,])([0-9]+)");
    private static final int MOST_DIGITS = 15;

    private final Optional<LengthUnit> bareUnit;

    private LengthNotation(Optional<LengthUnit> bareUnit) {
        this.bareUnit = bareUnit;
    }

    /** Numbers without a unit are in this one; feet-inches-eighths and suffixes are understood as well. */
    public static LengthNotation in(LengthUnit unit) {
        return new LengthNotation(Optional.of(unit));
    }

    /** Numbers without a unit are unreadable; for feet-inches-eighths tables and for job files. */
    public static LengthNotation unitRequired() {
        return new LengthNotation(Optional.empty());
    }

    /** The length in a text, or why there is none. Blanks around it do not count. */
    public LengthReading read(String text) {
        String length = Dashes.plain(text).strip();
        if (length.isEmpty()) {
            return new Unreadable("is empty; write a length");
        }
        if (FeetInchesEighths.isMeantIn(length)) {
            return FeetInchesEighths.read(length);
        }
        Matcher decimal = DECIMAL.matcher(length);
        if (!decimal.matches() || decimal.group(2).isEmpty() && decimal.group(3) == null) {
            return new Unreadable(notANumber(length));
        }
        return readDecimal(decimal);
    }

    private LengthReading readDecimal(Matcher parts) {
        String whole = parts.group(2);
        String fraction = parts.group(3) == null ? "" : parts.group(3).substring(1);
        if (parts.group(3) != null && fraction.isEmpty()) {
            return new Unreadable("ends in its decimal mark; write the decimals or leave the mark out");
        }
        if (whole.length() + fraction.length() > MOST_DIGITS) {
            return new Unreadable("has more than " + MOST_DIGITS + " digits; write so many at most");
        }
        BigDecimal number = new BigDecimal(parts.group(1) + whole + "." + fraction + "0");
        Optional<LengthUnit> unit = bareUnit;
        if (parts.group(4) != null) {
            unit = LengthUnit.ofSymbol(parts.group(4));
            if (unit.isEmpty()) {
                return new Unreadable(unknownUnit(parts.group(4)));
            }
        } else if (unit.isEmpty() && number.signum() != 0) {
            return new Unreadable("has no unit; write 2-3-4 (ft-in-eighths), or m, mm, cm, ft or in behind the number");
        }
        // a bare zero says nothing of how fine its table is drawn
        double leastCount = unit.isEmpty()
            ? Double.POSITIVE_INFINITY
            : unit.get().toMetres(BigDecimal.ONE.movePointLeft(fraction.length()));
        return new Length(unit.orElse(LengthUnit.METRE).toMetres(number), leastCount);
    }

    private static String unknownUnit(String symbol) {
        if (symbol.matches("[eE][0-9]*")) {
            return "is written with an exponent; write the number out";
        }
        return "has the unit \"" + symbol + "\", which is not known; write m, mm, cm, ft or in, or 2-3-4 (ft-in-eighths)";
    }

    private String notANumber(String text) {
        Matcher marks = TWO_MARKS.matcher(text);
        if (!marks.matches() || bareUnit.isEmpty()) {
            return "is not a length; write a number such as 1.28 m, or 4-2-3 (ft-in-eighths)";
        }
        // two different marks: the first one parts the thousands
        String likely = marks.group(2).equals(marks.group(4))
            ? marks.group(1) + "." + marks.group(3) + marks.group(5)
            : marks.group(1) + marks.group(3) + "." + marks.group(5);
        String dashed = FeetInches.dashed(bareUnit.get().toMetres(new BigDecimal(likely)));
        return "is not a number; write " + likely + (dashed.equals("0-0-0") ? "" : " or " + dashed + " (ft-in-eighths)");
    }
}
