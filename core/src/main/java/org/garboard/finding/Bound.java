package org.garboard.finding;

/**
 * What a figure is held to.
 *
 * @param value in {@code unit}
 * @param unit for people: "mm", "deg", "dB"
 * @param source where it comes from
 */
public record Bound(double value, String unit, String source) {
    public Bound {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a bound of " + value + " " + unit + "; it must be more than 0");
        }
    }

    /** As the job has it instead. */
    public Bound with(double asked) {
        return new Bound(asked, unit, "from the job; the program's own would be " + value + " " + unit);
    }
}
