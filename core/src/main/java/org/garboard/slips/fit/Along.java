package org.garboard.slips.fit;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.garboard.geometry.KnotVector;
import org.garboard.geometry.SplineGram;

/** Cubic splines along the boat: over the distance aft, counted in mean gaps between stations. */
public final class Along {
    private final double[] sites;
    private final double[] logGap;
    private final KnotVector knots;
    private final int[] first;
    private final double[][] basis;
    private final Map<Gram, double[][]> grams = new HashMap<>();

    private record Gram(int order, Pace pace) {
    }

    /** @param x of the stations, rising [m] */
    public Along(double[] x) {
        int n = x.length;
        double mean = (x[n - 1] - x[0]) / (n - 1);
        sites = new double[n];
        logGap = new double[n];
        for (int j = 0; j < n; j++) {
            sites[j] = (x[j] - x[0]) / mean;
            double before = x[Math.max(j, 1)] - x[Math.max(j, 1) - 1];
            double after = x[Math.min(j, n - 2) + 1] - x[Math.min(j, n - 2)];
            logGap[j] = 0.5 * Math.log(before * after / (mean * mean));
        }
        knots = KnotVector.notAKnot(sites);
        first = new int[n];
        basis = new double[n][];
        double[] values = new double[16];
        for (int j = 0; j < n; j++) {
            first[j] = knots.cell(sites[j]);
            knots.basis(first[j], sites[j], values);
            basis[j] = Arrays.copyOf(values, 4);
        }
    }

    public int stations() {
        return sites.length;
    }

    public int functions() {
        return knots.size();
    }

    /** The first of the four functions that are not zero at a station. */
    int firstFunction(int station) {
        return first[station];
    }

    /** Value of one of those four at the station. */
    double basis(int station, int function) {
        return basis[station][function];
    }

    /**
     * Integrals of products of derivatives of the functions, banded; weighed along the boat by the pace.
     *
     * @param order of the derivative, 0 to 3
     */
    double[][] gram(int order, Pace pace) {
        return grams.computeIfAbsent(new Gram(order, pace), key -> SplineGram.ofDerivative(knots, order,
                s -> pace.weight(order, gap(s), 1 - s / sites[sites.length - 1])));
    }

    /** Gap between stations near s, over the mean gap; geometric from station to station. */
    private double gap(double s) {
        int j = 0;
        while (j < sites.length - 2 && s > sites[j + 1]) {
            j++;
        }
        double t = (s - sites[j]) / (sites[j + 1] - sites[j]);
        return Math.exp(logGap[j] + t * (logGap[j + 1] - logGap[j]));
    }
}
