package org.garboard.hull;

import java.util.Arrays;

/** Rising places at which a surface is taken, closer where it needs them closer. Owns its arrays. */
final class Sites {
    private static final int LEAST = 4;

    private final double[] at;
    /** How often the interval after each site has been halved. */
    private final int[] halvings;

    private Sites(double[] at, int[] halvings) {
        this.at = at;
        this.halvings = halvings;
    }

    /** The given places and those half-way between; four at least. */
    static Sites halving(double... places) {
        Sites sites = new Sites(places, new int[places.length]);
        do {
            boolean[] all = new boolean[sites.intervals()];
            Arrays.fill(all, true);
            sites = sites.halved(all);
        } while (sites.size() < LEAST);
        return sites;
    }

    int size() {
        return at.length;
    }

    int intervals() {
        return at.length - 1;
    }

    double at(int i) {
        return at[i];
    }

    double middle(int interval) {
        return 0.5 * (at[interval] + at[interval + 1]);
    }

    int halvings(int interval) {
        return halvings[interval];
    }

    double[] toArray() {
        return at.clone();
    }

    /** With another site in the middle of every interval that is marked. */
    Sites halved(boolean[] marked) {
        double[] closer = new double[2 * at.length];
        int[] deeper = new int[2 * at.length];
        int count = 0;
        for (int i = 0; i < at.length; i++) {
            boolean halve = i < intervals() && marked[i];
            closer[count] = at[i];
            deeper[count++] = halvings[i] + (halve ? 1 : 0);
            if (halve) {
                closer[count] = middle(i);
                deeper[count++] = halvings[i] + 1;
            }
        }
        return new Sites(Arrays.copyOf(closer, count), Arrays.copyOf(deeper, count));
    }
}
