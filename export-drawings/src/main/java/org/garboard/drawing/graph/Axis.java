package org.garboard.drawing.graph;

import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.garboard.units.FixedDecimal;

/**
 * Round figures along one side of a graph.
 *
 * @param first of them, in steps from nought
 * @param steps from the first to the last
 * @param step between two
 * @param places behind the point that a step has
 */
record Axis(int first, int steps, double step, int places) {
    /** Steps are the largest round ones of which so many go into the range: our choice, which gives four to ten of them. */
    private static final double FEWEST = 3.5;
    private static final double SLACK = 1e-9;

    /** From no more than the least to no less than the most. */
    static Axis over(double least, double most) {
        double wanted = Math.max(most - least, 1e-6) / FEWEST;
        double ten = Math.pow(10, Math.floor(Math.log10(wanted)));
        double step = ten;
        for (double round : new double[] {2, 2.5, 5}) {
            step = round * ten <= wanted * (1 + SLACK) ? round * ten : step;
        }
        int first = (int) Math.floor(least / step + SLACK);
        int last = Math.max(first + 1, (int) Math.ceil(most / step - SLACK));
        int places = 0;
        while (Math.abs(step * Math.pow(10, places) - Math.rint(step * Math.pow(10, places))) > SLACK) {
            places++;
        }
        return new Axis(first, last - first, step, places);
    }

    /** How far along a figure lies: 0 at the first, 1 at the last. */
    double share(double figure) {
        return (figure / step - first) / steps;
    }

    String figure(int number) {
        return FixedDecimal.format((first + number) * step, places);
    }

    Stream<String> figures() {
        return IntStream.rangeClosed(0, steps).mapToObj(this::figure);
    }
}
