package org.garboard.units;

import java.math.BigDecimal;
import java.util.Optional;

/**
 * The units in which a boat is measured, and what each is in metres.
 *
 * @see "International yard and pound agreement of 1959: 1 yard = 0.9144 m exactly, so 1 ft = 0.3048 m"
 */
public enum LengthUnit {
    METRE("m", "1"),
    CENTIMETRE("cm", "0.01"),
    MILLIMETRE("mm", "0.001"),
    FOOT("ft", "0.3048"),
    INCH("in", "0.0254");

    private final String symbol;
    private final BigDecimal metres;

    LengthUnit(String symbol, String metres) {
        this.symbol = symbol;
        this.metres = new BigDecimal(metres);
    }

    /** As written behind a number: "mm". */
    public String symbol() {
        return symbol;
    }

    /** One of this unit [m]. */
    public double metres() {
        return metres.doubleValue();
    }

    /** A number of this unit [m], rounded once, so that 450 mm is the same double as 0.45 m. */
    public double toMetres(BigDecimal number) {
        return number.multiply(metres).doubleValue();
    }

    /** The unit that is written so, letter case as in SI. */
    public static Optional<LengthUnit> ofSymbol(String symbol) {
        for (LengthUnit unit : values()) {
            if (unit.symbol.equals(symbol)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }
}
