package org.garboard.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.nio.charset.StandardCharsets;
import org.garboard.nonsense.OneInput;

/** Any text is a length or has a reason why not, and a length that is printed is read again as the same. */
public class LengthNotationFuzzTest {
    private static final LengthNotation[] NOTATIONS = {
        LengthNotation.unitRequired(), LengthNotation.in(LengthUnit.METRE), LengthNotation.in(LengthUnit.FOOT)};

    @FuzzTest
    void reads(byte[] bytes) {
        holds(bytes);
    }

    /** For a run without JUnit, of as many inputs as one likes. */
    public static void fuzzerTestOneInput(byte[] bytes) {
        OneInput.read(() -> holds(bytes));
    }

    private static void holds(byte[] bytes) {
        String text = new String(bytes, StandardCharsets.UTF_8);
        for (LengthNotation notation : NOTATIONS) {
            LengthReading reading = notation.read(text);
            if (reading instanceof LengthReading.Unreadable unreadable) {
                assertFalse(unreadable.reason().isBlank());
            } else {
                Length length = (Length) reading;
                assertTrue(Double.isFinite(length.metres()) && length.leastCount() > 0, length::toString);
                notation.read(FixedDecimal.format(length.metres(), 6) + " m").length()
                    .ifPresent(again -> assertEquals(length.metres(), again.metres(), 5.1e-7));
            }
        }
    }
}
