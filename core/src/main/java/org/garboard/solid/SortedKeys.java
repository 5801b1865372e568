package org.garboard.solid;

/** The order of long keys, without an object for each: a merge sort of their indices, from runs of one upward. */
final class SortedKeys {
    private SortedKeys() {
    }

    /** Indices of the keys from the least to the greatest, equal keys by index. */
    static int[] order(long[] keys) {
        int[] order = new int[keys.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        int[] merged = new int[keys.length];
        for (long run = 1; run < keys.length; run *= 2) {
            for (long from = 0; from < keys.length; from += 2 * run) {
                merge(order, merged, keys, (int) from, (int) Math.min(from + run, keys.length), (int) Math.min(from + 2 * run, keys.length));
            }
            int[] held = order;
            order = merged;
            merged = held;
        }
        return order;
    }

    private static void merge(int[] order, int[] merged, long[] keys, int from, int middle, int end) {
        int one = from;
        int other = middle;
        for (int at = from; at < end; at++) {
            merged[at] = one < middle && (other == end || keys[order[one]] <= keys[order[other]]) ? order[one++] : order[other++];
        }
    }
}
