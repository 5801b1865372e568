package org.garboard.units;

import static org.junit.jupiter.api.Assertions.assertEquals;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.garboard.units.LengthReading.Unreadable;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LengthNotationTest {
    private static final double EIGHTH = 0.003175;
    private static final double SIXTEENTH = 0.0015875;

    @ParameterizedTest
    @CsvSource({
        "2-3-4,     698.5",
        "2-3-4+,    700.0875",
        "2-3-4-,    696.9125",
        "2-3-3+,    696.9125",
        "-0-1-2,    -31.75",
        "-0-1-2+,   -33.3375",
        "0-11-7+,   303.2125",
        "10-11-7+,  3351.2125",
        "0-0-1,     3.175",
        "0-0-0,     0",
        "0-0-0+,    1.5875",
        "12-0-0,    3657.6",
        "02-03-4,   698.5",
        "2–3–4,     698.5",
        "−0-1-2,    -31.75",
    })
    void exact_feetInchesEighths(String text, double millimetres) {
        assertEquals(millimetres / 1000, metres(LengthNotation.unitRequired(), text), 1e-15);
        assertEquals(millimetres / 1000, metres(LengthNotation.in(LengthUnit.METRE), text), 1e-15);
    }

    @Test
    void exact_aSixteenthLessIsTheSameDoubleEitherWay() {
        assertEquals(metres(LengthNotation.unitRequired(), "2-3-3+"), metres(LengthNotation.unitRequired(), "2-3-4-"));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "MILLIMETRE | 1410     | 1.41",
        "MILLIMETRE | -12.5    | -0.0125",
        "METRE      | 0,45     | 0.45",
        "METRE      | .5       | 0.5",
        "METRE      | 450 mm   | 0.45",
        "METRE      | 450mm    | 0.45",
        "METRE      | +1.2     | 1.2",
        "CENTIMETRE | 12.3     | 0.123",
        "FOOT       | 10       | 3.048",
        "FOOT       | 1.2 m    | 1.2",
        "INCH       | 27.5     | 0.6985",
        "MILLIMETRE | 27.5 in  | 0.6985",
        "MILLIMETRE | 2,5 ft   | 0.762",
        "MILLIMETRE | 12 cm    | 0.12",
    })
    void exact_decimals(LengthUnit bare, String text, double metres) {
        assertEquals(metres, metres(LengthNotation.in(bare), text));
    }

    @ParameterizedTest
    @CsvSource({
        "2-3-4, 0.003175", "2-3-4+, 0.0015875", "2-3-4-, 0.0015875", "1410, 0.001", "1410.5, 0.0001",
        "'0,45 m', 0.01", "27.25 in, 0.000254", "4 ft, 0.3048",
    })
    void exact_leastCount(String text, double leastCount) {
        Length length = LengthNotation.in(LengthUnit.MILLIMETRE).read(text).length().orElseThrow();
        assertEquals(leastCount, length.leastCount(), 1e-18);
    }

    @Test
    void exact_bareZeroNeedsNoUnitAndSaysNothingOfTheLeastCount() {
        Length zero = LengthNotation.unitRequired().read("0").length().orElseThrow();
        assertEquals(new Length(0, Double.POSITIVE_INFINITY), zero);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', value = {
        "2-13-0    | has 13 inches; inches go from 0 to 11",
        "2-3-9     | has 9 eighths; eighths go from 0 to 7",
        "2-3-8     | has 8 eighths; eighths go from 0 to 7",
        "2-3-1234567890123 | has 1234567890123 eighths; eighths go from 0 to 7",
        "2--4      | has no inches; write feet-inches-eighths as in 2-3-4, a sixteenth more as 2-3-4+",
        "2-3--     | has no eighths; write feet-inches-eighths as in 2-3-4, a sixteenth more as 2-3-4+",
        "2-3       | has 2 parts; write feet-inches-eighths as in 2-3-4, a sixteenth more as 2-3-4+",
        "2-3-4-5   | has 4 parts; write feet-inches-eighths as in 2-3-4, a sixteenth more as 2-3-4+",
        "2-3-4--   | has 4 parts; write feet-inches-eighths as in 2-3-4, a sixteenth more as 2-3-4+",
        "2-3-1/2   | has a fraction; write feet-inches-eighths as in 2-3-4, a sixteenth more as 2-3-4+",
        "27+       | has 1 part; write feet-inches-eighths as in 2-3-4, a sixteenth more as 2-3-4+",
        "1234567-0-0 | has more than 6 digits of feet; write so many at most",
        "2-3-4 mm  | is not a length; write a number such as 1.28 m, or 4-2-3 (ft-in-eighths)",
        "1.2.8     | is not a number; write 1.28 or 4-2-3 (ft-in-eighths)",
        "1,234.5   | is not a number; write 1234.5 or 4050-2-3 (ft-in-eighths)",
        "1e3       | is written with an exponent; write the number out",
        "12.       | ends in its decimal mark; write the decimals or leave the mark out",
        "12 km     | has the unit \"km\", which is not known; write m, mm, cm, ft or in, or 2-3-4 (ft-in-eighths)",
        "12 M      | has the unit \"M\", which is not known; write m, mm, cm, ft or in, or 2-3-4 (ft-in-eighths)",
        "chine     | is not a length; write a number such as 1.28 m, or 4-2-3 (ft-in-eighths)",
        "'- '      | is not a length; write a number such as 1.28 m, or 4-2-3 (ft-in-eighths)",
        "1234567890.123456 | has more than 15 digits; write so many at most",
        "' '       | is empty; write a length",
        "٣         | is not a length; write a number such as 1.28 m, or 4-2-3 (ft-in-eighths)",
    })
    void badInput_saysWhatIsWrongAndWhatWouldWork(String text, String reason) {
        assertEquals(new Unreadable(reason), LengthNotation.in(LengthUnit.METRE).read(text));
    }

    @Test
    void badInput_twoMarksInATableWhereFeetWouldComeToNothing() {
        assertEquals(new Unreadable("is not a number; write 1.28"),
            LengthNotation.in(LengthUnit.MILLIMETRE).read("1.2.8"));
    }

    @Test
    void badInput_bareNumberWhereTheUnitIsNotAgreed() {
        assertEquals(
            new Unreadable("has no unit; write 2-3-4 (ft-in-eighths), or m, mm, cm, ft or in behind the number"),
            LengthNotation.unitRequired().read("27.5"));
    }

    @Property
    void law_printedEighthsReadBackToTheSameLength(@ForAll @IntRange(min = -20_000, max = 20_000) int eighths) {
        double metres = eighths * EIGHTH;
        Length read = LengthNotation.unitRequired().read(FeetInches.dashed(metres)).length().orElseThrow();
        assertEquals(metres, read.metres(), 1e-12);
        assertEquals(EIGHTH, read.leastCount());
    }

    @Property
    void law_plusAndMinusAreASixteenthEitherSide(
            @ForAll @IntRange(max = 99) int feet,
            @ForAll @IntRange(max = 11) int inches,
            @ForAll @IntRange(max = 7) int eighths) {
        String text = feet + "-" + inches + "-" + eighths;
        double middle = metres(LengthNotation.unitRequired(), text);
        assertEquals(middle + SIXTEENTH, metres(LengthNotation.unitRequired(), text + "+"), 1e-14);
        assertEquals(middle - SIXTEENTH, metres(LengthNotation.unitRequired(), text + "-"), 1e-14);
        assertEquals(-middle, metres(LengthNotation.unitRequired(), "-" + text), 0.0);
    }

    @Property
    void law_pointAndCommaReadAlike(@ForAll @IntRange(min = -99_999, max = 99_999) int thousandths) {
        String point = FixedDecimal.format(thousandths / 1000.0, 3);
        assertEquals(thousandths / 1000.0, metres(LengthNotation.in(LengthUnit.METRE), point));
        assertEquals(thousandths / 1000.0, metres(LengthNotation.in(LengthUnit.METRE), point.replace('.', ',')));
    }

    private static double metres(LengthNotation notation, String text) {
        return notation.read(text).length().orElseThrow(() -> new AssertionError(notation.read(text))).metres();
    }
}
