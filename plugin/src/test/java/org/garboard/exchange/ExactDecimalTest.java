package org.garboard.exchange;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ExactDecimalTest {

    /** 2E-3 and 2E23 are printed with more digits than needed, or otherwise, by some runtimes. */
    @ParameterizedTest
    @CsvSource({"0,0", "-0.0,0", "1,1", "-1200,-1200", "0.1,0.1", "0.30480000000000002,0.3048", "2E-3,0.002", "1E-7,0.0000001",
        "2E23,200000000000000000000000", "9007199254740993,9007199254740992", "0.33333333333333331,0.3333333333333333"})
    void writesTheFewestDigitsWithoutExponent(double value, String text) {
        assertEquals(text, ExactDecimal.of(value).toPlainString());
    }

    @Test
    void law_readsBackToTheSameBits() {
        Random random = new Random(1);
        for (int i = 0; i < 20_000; i++) {
            double value = i % 2 == 0 ? random.nextDouble() * 20 - 10 : Double.longBitsToDouble(random.nextLong());
            if (Double.isFinite(value)) {
                String text = ExactDecimal.of(value).toPlainString();
                assertEquals(Double.doubleToLongBits(value), Double.doubleToLongBits(Double.parseDouble(text)), text);
            }
        }
    }

    @Test
    void law_aDigitLessReadsBackToAnother() {
        Random random = new Random(2);
        for (int i = 0; i < 20_000; i++) {
            double value = random.nextInt(20_000) * 0.0254 / 8 + (i % 2 == 0 ? 0 : random.nextDouble());
            BigDecimal exact = ExactDecimal.of(value);
            for (RoundingMode mode : new RoundingMode[] {RoundingMode.DOWN, RoundingMode.UP}) {
                int fewer = exact.precision() - 1;
                if (fewer > 0) {
                    assertNotEquals(value, exact.round(new MathContext(fewer, mode)).doubleValue(), exact.toString());
                }
            }
            assertTrue(exact.precision() <= 17, exact.toString());
        }
    }
}
