package org.garboard.drawing;

import java.util.Arrays;
import java.util.List;

/**
 * A reducing scale, 1 to {@code denominator}.
 *
 * @param denominator how many times the drawing is smaller than the thing
 */
public record Scale(int denominator) {

    /** ISO 5455, for jobs in millimetres; largest first. */
    public static final List<Scale> METRIC = scales(1, 2, 5, 10, 20, 50, 100);

    /** Whole fractions of an inch to the foot, for jobs in feet (common practice); largest first. */
    public static final List<Scale> FEET = scales(1, 2, 4, 8, 12, 16, 24, 48, 96);

    public Scale {
        if (denominator < 1) {
            throw new IllegalArgumentException("a scale's denominator is 1 or more, not " + denominator);
        }
    }

    private static List<Scale> scales(int... denominators) {
        return Arrays.stream(denominators).mapToObj(Scale::new).toList();
    }

    /** Millimetres on paper of a true length [m]. */
    public double paper(double metres) {
        return metres * 1000 / denominator;
    }

    /** True millimetres of a length on paper [mm]. */
    public double trueMm(double paperMm) {
        return paperMm * denominator;
    }

    /** "1:20". */
    public String words() {
        return "1:" + denominator;
    }
}
