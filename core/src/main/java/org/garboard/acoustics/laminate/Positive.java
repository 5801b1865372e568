package org.garboard.acoustics.laminate;

/** Values that are more than nothing, and finite. */
final class Positive {

    private Positive() {
    }

    static void require(String what, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(what + " is " + value + " " + unit + "; it must be more than 0");
        }
    }
}
