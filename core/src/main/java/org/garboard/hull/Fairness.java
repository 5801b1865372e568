package org.garboard.hull;

/** A measure of unfairness: a quadratic form over the poles, as a band, with a weight along and one across. */
sealed interface Fairness permits PanelFairness, LineFairness {

    /** Number of poles. */
    int size();

    /** Diagonals below the main one. */
    int halfWidth();

    /** The band at two weights given by their decimal logarithms. */
    double[] band(double first, double second);
}
