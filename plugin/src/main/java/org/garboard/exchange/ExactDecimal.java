package org.garboard.exchange;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Doubles as decimals that lose nothing: the fewest significant digits that read back to the very same
 * double, a zero without sign.
 *
 * <p>Not {@code Double.toString}: before Java 19 it sometimes prints a digit too many, so that its
 * text depends on the runtime.
 */
final class ExactDecimal {
    /** A decimal of so many digits survives the way through a normal double, so rounding to them finds any shorter one. */
    private static final int SURE_DIGITS = 15;
    private static final int MOST_DIGITS = 17;

    private ExactDecimal() {
    }

    static BigDecimal of(double value) {
        BigDecimal expansion = new BigDecimal(value);
        for (int digits = SURE_DIGITS; digits < MOST_DIGITS; digits++) {
            BigDecimal rounded = rounded(expansion, digits);
            if (rounded.doubleValue() == value) {
                return rounded;
            }
        }
        return rounded(expansion, MOST_DIGITS);
    }

    /** x,y,z without exponents. */
    static String point(double x, double y, double z) {
        return of(x).toPlainString() + ',' + of(y).toPlainString() + ',' + of(z).toPlainString();
    }

    private static BigDecimal rounded(BigDecimal expansion, int digits) {
        return expansion.round(new MathContext(digits, RoundingMode.HALF_EVEN)).stripTrailingZeros();
    }
}
