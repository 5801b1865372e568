package org.garboard.tablefile;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.garboard.units.Length;
import org.garboard.units.LengthReading;

/** Reads the lengths of one file, and watches that they are all written the same way. */
final class Lengths {
    private static final Pattern MARKED = Pattern.compile("[-+]?([0-9]*)([.,])([0-9]+)");

    private final TableUnit unit;
    private final Problems problems;
    private final List<Marked> marked = new ArrayList<>();
    private double leastCount = Double.POSITIVE_INFINITY;

    /** A bare number with a decimal mark. */
    private record Marked(Cell cell, String place, String meaning, char mark, boolean mayBeThousands) {
    }

    Lengths(TableUnit unit, Problems problems) {
        this.unit = unit;
        this.problems = problems;
    }

    /** An offset: counts for the table's least count. */
    Optional<Double> offset(Cell cell, String place, String meaning) {
        Optional<Length> length = read(cell, place, meaning);
        length.ifPresent(read -> leastCount = Math.min(leastCount, read.leastCount()));
        return length.map(Length::metres);
    }

    /** A distance or a level, which says nothing of how finely the offsets are written. */
    Optional<Double> place(Cell cell, String place, String meaning) {
        return read(cell, place, meaning).map(Length::metres);
    }

    private Optional<Length> read(Cell cell, String place, String meaning) {
        Matcher number = MARKED.matcher(cell.text());
        if (number.matches()) {
            boolean thousands = number.group(1).matches("[1-9][0-9]{0,2}") && number.group(3).length() == 3;
            marked.add(new Marked(cell, place, meaning, number.group(2).charAt(0), thousands));
        }
        LengthReading reading = unit.notation().read(cell.text());
        if (reading instanceof LengthReading.Unreadable unreadable) {
            problems.inCell(cell, place, meaning, unreadable.reason());
        }
        return reading.length();
    }

    /**
     * Says where points and commas are mixed, or where each of them may as well part the thousands: in metres
     * and feet no boat is that long, in the smaller units it would be.
     */
    void compareMarks() {
        for (Marked number : marked) {
            Marked first = marked.get(0);
            if (number.mark != first.mark) {
                problems.inCell(number.cell, number.place, number.meaning, "has a decimal " + name(number.mark)
                    + ", and " + first.cell.quoted() + " in line " + first.cell.row() + " a decimal " + name(first.mark)
                    + "; use one of them throughout");
            }
        }
        boolean small = unit == TableUnit.MILLIMETRE || unit == TableUnit.CENTIMETRE || unit == TableUnit.INCH;
        if (small && !marked.isEmpty() && marked.stream().allMatch(Marked::mayBeThousands)) {
            Marked first = marked.get(0);
            String text = first.cell.text();
            problems.inCell(first.cell, first.place, first.meaning, "may be " + text.replaceAll("[.,]", "") + " or "
                + text.replaceAll("0+$", "").replaceAll("[.,]$", "") + "; leave out what parts the thousands, or write other than three decimals");
        }
    }

    private static String name(char mark) {
        return mark == ',' ? "comma" : "point";
    }

    /** The smallest step of the offsets read so far [m]. */
    double leastCount() {
        return leastCount;
    }
}
