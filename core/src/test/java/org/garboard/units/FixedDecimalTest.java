package org.garboard.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.math.RoundingMode;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FixedDecimalTest {

    @ParameterizedTest
    @CsvSource({
        "0, 0, 0", "0, 3, 0.000", "-0.0, 3, 0.000", "-0.0004, 3, 0.000", "-0.0006, 3, -0.001", "-0.4, 0, 0",
        "1.005, 2, 1.00", "1.115, 2, 1.11", "0.125, 2, 0.13", "-0.125, 2, -0.13", "0.5, 0, 1", "2.5, 0, 3",
        "999.9996, 3, 1000.000", "12.03, 6, 12.030000", "1e22, 0, 10000000000000000000000",
        "-123456789012345678, 3, -123456789012345680.000", "1e-300, 6, 0.000000", "4503599627370495.5, 0, 4503599627370496",
    })
    void exact_places(double value, int places, String text) {
        assertEquals(text, FixedDecimal.format(value, places));
    }

    @Property
    void law_roundsAsTheExactDecimalDoes(@ForAll double value, @ForAll @IntRange(max = 15) int places) {
        assertAsExactDecimal(value, places);
    }

    @Property
    void law_roundsAsTheExactDecimalDoesAtTheSizeOfBoats(
            @ForAll @DoubleRange(min = -50_000, max = 50_000) double value, @ForAll @IntRange(max = 9) int places) {
        assertAsExactDecimal(value, places);
    }

    @Property
    void law_halvesGoAwayFromZeroWhenTheyAreHalves(@ForAll @IntRange(min = -9_999_999, max = 9_999_999) int halves) {
        for (int places = 0; places < 4; places++) {
            assertAsExactDecimal(halves / (2 * Math.pow(10, places)), places);
        }
    }

    private static void assertAsExactDecimal(double value, int places) {
        BigDecimal exact = new BigDecimal(value).setScale(places, RoundingMode.HALF_UP);
        assertEquals(exact.toPlainString(), FixedDecimal.format(value, places));
    }

    @Test
    void badInput_numbersThatAreNone() {
        for (double bad : new double[] {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY}) {
            assertEquals("a decimal of " + bad + " cannot be printed",
                assertThrows(IllegalArgumentException.class, () -> FixedDecimal.format(bad, 3)).getMessage());
        }
        assertEquals("decimal places 16 are outside 0 to 15",
            assertThrows(IllegalArgumentException.class, () -> FixedDecimal.format(1, 16)).getMessage());
    }
}
