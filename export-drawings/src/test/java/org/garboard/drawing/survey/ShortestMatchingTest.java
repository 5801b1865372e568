package org.garboard.drawing.survey;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Arrays;
import java.util.Random;
import org.junit.jupiter.api.Test;

class ShortestMatchingTest {

    /** Every way to seat them, tried one after another. */
    @Test
    void exact_noWayToSeatThemIsShorter() {
        Random lot = new Random(3);
        for (int trial = 0; trial < 300; trial++) {
            int places = 1 + lot.nextInt(5);
            int seats = places + lot.nextInt(3);
            double[][] ways = new double[places][seats];
            for (double[] row : ways) {
                for (int s = 0; s < seats; s++) {
                    row[s] = trial % 3 == 0 ? lot.nextInt(4) : lot.nextDouble();
                }
            }
            int[] seat = ShortestMatching.of(ways);
            double sum = 0;
            for (int i = 0; i < places; i++) {
                sum += ways[i][seat[i]];
            }
            assertEquals(places, Arrays.stream(seat).distinct().count());
            assertEquals(least(ways, 0, new boolean[seats]), sum, 1e-12);
        }
    }

    private static double least(double[][] ways, int place, boolean[] taken) {
        if (place == ways.length) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        for (int s = 0; s < taken.length; s++) {
            if (!taken[s]) {
                taken[s] = true;
                least = Math.min(least, ways[place][s] + least(ways, place + 1, taken));
                taken[s] = false;
            }
        }
        return least;
    }

    @Test
    void exact_nobodyIsNobodySeated() {
        assertArrayEquals(new int[0], ShortestMatching.of(new double[0][]));
    }

    @Test
    void refusesFewerSeatsThanPlaces() {
        assertThrows(IllegalArgumentException.class, () -> ShortestMatching.of(new double[][] {{1}, {2}}));
    }
}
