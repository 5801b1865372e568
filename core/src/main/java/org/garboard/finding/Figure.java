package org.garboard.finding;

/**
 * A figure, held to a bound.
 *
 * @param name what was asked
 * @param side on which side of the bound it must be
 * @param value in the bound's unit; infinite where there is nothing to keep clear of
 * @param bound what it is held to
 * @param sentence the answer in words
 */
public record Figure(String name, Side side, double value, Bound bound, String sentence) implements Finding {
    public Figure {
        if (Double.isNaN(value)) {
            throw new IllegalArgumentException(name + " is no number; say that it is not known instead");
        }
    }

    /** Whether the bound is the most or the least. */
    public enum Side { AT_MOST, AT_LEAST }

    public static Figure atMost(String name, double value, Bound bound, String met, String notMet) {
        return new Figure(name, Side.AT_MOST, value, bound, value <= bound.value() ? met : notMet);
    }

    public static Figure atLeast(String name, double value, Bound bound, String met, String notMet) {
        return new Figure(name, Side.AT_LEAST, value, bound, value >= bound.value() ? met : notMet);
    }

    @Override
    public String source() {
        return bound.source();
    }

    /** Figure over most, or least over figure; met at 1 and below. */
    public double utilisation() {
        if (side == Side.AT_MOST) {
            return value / bound.value();
        }
        return value <= 0 ? Double.POSITIVE_INFINITY : bound.value() / value;
    }

    @Override
    public Answer answer() {
        boolean met = side == Side.AT_MOST ? value <= bound.value() : value >= bound.value();
        return met ? Answer.YES : Answer.NO;
    }
}
