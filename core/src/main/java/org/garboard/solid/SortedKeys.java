package org.garboard.solid;

/** The order of long keys, without an object for each: a heap sort of their indices. */
final class SortedKeys {
    private SortedKeys() {
    }

    /** Indices of the keys from the least to the greatest, equal keys by index. */
    static int[] order(long[] keys) {
        int[] order = new int[keys.length];
        for (int i = 0; i < order.length; i++) {
            order[i] = i;
        }
        for (int root = order.length / 2 - 1; root >= 0; root--) {
            sink(order, root, order.length, keys);
        }
        for (int end = order.length - 1; end > 0; end--) {
            swap(order, 0, end);
            sink(order, 0, end, keys);
        }
        return order;
    }

    private static void sink(int[] order, int from, int end, long[] keys) {
        int root = from;
        while (2 * root + 1 < end) {
            int child = 2 * root + 1;
            if (child + 1 < end && less(order[child], order[child + 1], keys)) {
                child++;
            }
            if (!less(order[root], order[child], keys)) {
                return;
            }
            swap(order, root, child);
            root = child;
        }
    }

    private static boolean less(int one, int other, long[] keys) {
        return keys[one] != keys[other] ? keys[one] < keys[other] : one < other;
    }

    private static void swap(int[] order, int i, int k) {
        int held = order[i];
        order[i] = order[k];
        order[k] = held;
    }
}
