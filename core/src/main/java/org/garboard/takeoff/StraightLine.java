package org.garboard.takeoff;

/**
 * The straight line of least squares through points.
 *
 * @param middle mean of the places
 * @param value of the line there
 * @param slope of the line
 */
record StraightLine(double middle, double value, double slope) {

    /** @param at places, two of them different, or else the line runs level */
    static StraightLine through(double[] at, double[] values) {
        double middle = 0;
        double mean = 0;
        for (int i = 0; i < at.length; i++) {
            middle += at[i] / at.length;
            mean += values[i] / at.length;
        }
        double squares = 0;
        double products = 0;
        for (int i = 0; i < at.length; i++) {
            squares += (at[i] - middle) * (at[i] - middle);
            products += (at[i] - middle) * (values[i] - mean);
        }
        return new StraightLine(middle, mean, squares > 0 ? products / squares : 0);
    }

    double at(double place) {
        return value + slope * (place - middle);
    }
}
