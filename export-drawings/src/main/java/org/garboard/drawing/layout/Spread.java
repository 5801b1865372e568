package org.garboard.drawing.layout;

import java.util.Arrays;
import java.util.Comparator;

/** Moves places on a line apart until each keeps its distance, as little as can be. */
public final class Spread {

    private Spread() {
    }

    /** The same, none of them lower than a floor: those that would be are moved up, and their neighbours with them. */
    public static double[] apart(double[] wanted, double pitch, double floor) {
        double[] places = apart(wanted, pitch);
        Integer[] order = new Integer[places.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble(i -> places[i]));
        for (int rank = 0; rank < order.length; rank++) {
            places[order[rank]] = Math.max(places[order[rank]], floor + rank * pitch);
        }
        return places;
    }

    /**
     * New places, in the order given, at least a pitch apart, with the least sum of squared moves:
     * crowded neighbours stand evenly round the middle of where they want to be.
     */
    public static double[] apart(double[] wanted, double pitch) {
        Integer[] order = new Integer[wanted.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble(i -> wanted[i]));
        double[] middle = new double[wanted.length];
        int[] size = new int[wanted.length];
        int groups = 0;
        for (int rank = 0; rank < order.length; rank++) {
            middle[groups] = wanted[order[rank]] - rank * pitch;
            size[groups++] = 1;
            while (groups > 1 && middle[groups - 2] > middle[groups - 1]) {
                int both = size[groups - 2] + size[groups - 1];
                middle[groups - 2] = (middle[groups - 2] * size[groups - 2] + middle[groups - 1] * size[groups - 1]) / both;
                size[groups - 2] = both;
                groups--;
            }
        }
        double[] places = new double[wanted.length];
        int rank = 0;
        for (int group = 0; group < groups; group++) {
            for (int member = 0; member < size[group]; member++, rank++) {
                places[order[rank]] = middle[group] + rank * pitch;
            }
        }
        return places;
    }
}
