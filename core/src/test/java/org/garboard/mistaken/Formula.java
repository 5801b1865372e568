package org.garboard.mistaken;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.DoubleSupplier;

/**
 * A formula asked rightly, and the slips that can be made in asking.
 *
 * @param right what it must answer
 * @param within how near
 */
final class Formula {
    /** A slip must miss the value by so many tolerances. */
    private static final double FAR = 5;

    private final String what;
    private final double right;
    private final double within;
    private final DoubleSupplier asked;
    private final Map<String, DoubleSupplier> slips = new LinkedHashMap<>();

    private Formula(String what, double right, double within, DoubleSupplier asked) {
        this.what = what;
        this.right = right;
        this.within = within;
        this.asked = asked;
    }

    static Formula of(String what, double right, double within, DoubleSupplier asked) {
        return new Formula(what, right, within, asked);
    }

    /** The same formula asked with a slip. */
    Formula slip(String words, DoubleSupplier wrong) {
        slips.put(words, wrong);
        return this;
    }

    void seesThem() {
        assertEquals(right, asked.getAsDouble(), within, what);
        assertTrue(!slips.isEmpty(), what);
        slips.forEach((words, wrong) -> {
            double answer;
            try {
                answer = wrong.getAsDouble();
            } catch (IllegalArgumentException refused) {
                assertTrue(!refused.getMessage().isBlank(), what + ", " + words);
                return;
            }
            assertTrue(!(Math.abs(answer - right) <= FAR * within), what + ", " + words + ": " + answer + " passes for " + right);
        });
    }

    @Override
    public String toString() {
        return what;
    }
}
