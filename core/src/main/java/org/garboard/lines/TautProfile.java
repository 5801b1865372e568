package org.garboard.lines;

import java.util.Arrays;

/** A way over the skin laid out flat, heights over distance in plan, and a tape drawn tight under it. */
final class TautProfile {
    private final double[] distance;
    private final double[] heights;

    /** Places by their distance along a line, their offset from it, and their height [m]. */
    TautProfile(double[] along, double[] aside, double[] heights) {
        this.heights = heights;
        this.distance = new double[along.length];
        for (int i = 1; i < along.length; i++) {
            distance[i] = distance[i - 1] + Math.hypot(along[i] - along[i - 1], aside[i] - aside[i - 1]);
        }
    }

    /** The places that the tape touches, its ends among them: the lower hull (textbook: monotone chain). */
    int[] touching() {
        int[] chain = new int[distance.length];
        int size = 0;
        for (int i = 0; i < distance.length; i++) {
            while (size > 1 && below(chain[size - 1], chain[size - 2], i) > 0) {
                size--;
            }
            chain[size++] = i;
        }
        return Arrays.copyOf(chain, size);
    }

    /** How far the straight between two others runs below a place [m]. */
    double below(int place, int one, int other) {
        double run = distance[other] - distance[one];
        double share = run > 0 ? (distance[place] - distance[one]) / run : 0;
        return heights[place] - heights[one] - share * (heights[other] - heights[one]);
    }
}
