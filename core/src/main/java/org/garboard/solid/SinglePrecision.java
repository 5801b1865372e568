package org.garboard.solid;

/**
 * Whether vertices stay apart when written in millimetres of single precision, as mesh files do: two that fall
 * together there open the mesh for whoever reads it.
 */
final class SinglePrecision {
    private SinglePrecision() {
    }

    /** A coordinate as mesh files hold it [mm]. */
    static float millimetres(double metres) {
        return (float) (1000 * metres);
    }

    static void verify(double[] places) {
        int vertices = places.length / 3;
        int[] slots = new int[Integer.highestOneBit(Math.max(4, 3 * vertices)) * 2];
        for (int vertex = 0; vertex < vertices; vertex++) {
            int slot = slot(places, vertex, slots.length);
            while (slots[slot] != 0) {
                if (same(places, slots[slot] - 1, vertex)) {
                    throw new IllegalArgumentException("vertices " + (slots[slot] - 1) + " and " + vertex
                        + " fall together in millimetres of single precision");
                }
                slot = slot + 1 & slots.length - 1;
            }
            slots[slot] = vertex + 1;
        }
    }

    private static int slot(double[] places, int vertex, int size) {
        int mixed = 0;
        for (int k = 0; k < 3; k++) {
            mixed = (mixed ^ Float.floatToIntBits(millimetres(places[3 * vertex + k]) + 0f)) * 0x9E3779B1;
            mixed ^= mixed >>> 15;
        }
        return mixed & size - 1;
    }

    private static boolean same(double[] places, int one, int other) {
        for (int k = 0; k < 3; k++) {
            if (millimetres(places[3 * one + k]) != millimetres(places[3 * other + k])) {
                return false;
            }
        }
        return true;
    }
}
