package org.garboard.drawing.survey;

import java.util.Arrays;

/**
 * Gives each of some places a seat of its own so that all ways together are shortest. Straight ways then cross nowhere: two that
 * crossed would be shorter exchanged.
 *
 * @see "Kuhn 1955, The Hungarian method for the assignment problem; in the form of shortest augmenting paths, Jonker and Volgenant 1987 (from memory)"
 */
final class ShortestMatching {
    private static final int NONE = -1;

    private ShortestMatching() {
    }

    /**
     * The seat of each place.
     *
     * @param ways from each place to each seat; no fewer seats than places
     */
    static int[] of(double[][] ways) {
        int seats = ways.length == 0 ? 0 : ways[0].length;
        if (seats < ways.length) {
            throw new IllegalArgumentException(ways.length + " places and only " + seats + " seats");
        }
        double[] ofPlace = new double[ways.length];
        double[] ofSeat = new double[seats];
        int[] holder = new int[seats];
        Arrays.fill(holder, NONE);
        for (int place = 0; place < ways.length; place++) {
            seat(place, ways, ofPlace, ofSeat, holder);
        }
        int[] seat = new int[ways.length];
        for (int s = 0; s < seats; s++) {
            if (holder[s] != NONE) {
                seat[holder[s]] = s;
            }
        }
        return seat;
    }

    /** Grows shortest paths from a place until one ends at a free seat, and moves everybody along it. */
    private static void seat(int place, double[][] ways, double[] ofPlace, double[] ofSeat, int[] holder) {
        double[] least = new double[ofSeat.length];
        int[] from = new int[ofSeat.length];
        boolean[] done = new boolean[ofSeat.length];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        Arrays.fill(from, NONE);
        int seat = NONE;
        int at = place;
        while (at != NONE) {
            int next = NONE;
            for (int s = 0; s < ofSeat.length; s++) {
                if (!done[s]) {
                    double over = ways[at][s] - ofPlace[at] - ofSeat[s];
                    if (over < least[s]) {
                        least[s] = over;
                        from[s] = seat;
                    }
                    next = next == NONE || least[s] < least[next] ? s : next;
                }
            }
            double step = least[next];
            ofPlace[place] += step;
            for (int s = 0; s < ofSeat.length; s++) {
                if (done[s]) {
                    ofPlace[holder[s]] += step;
                    ofSeat[s] -= step;
                } else {
                    least[s] -= step;
                }
            }
            done[next] = true;
            seat = next;
            at = holder[seat];
        }
        while (from[seat] != NONE) {
            holder[seat] = holder[from[seat]];
            seat = from[seat];
        }
        holder[seat] = place;
    }
}
