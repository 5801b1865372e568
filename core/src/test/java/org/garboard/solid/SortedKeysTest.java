package org.garboard.solid;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;

import java.util.Comparator;
import java.util.Random;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class SortedKeysTest {

    /** Against the platform's sort of objects, which is stable. */
    @Test
    void exact_asThePlatformOrdersThem() {
        Random lot = new Random(7);
        for (int count : new int[] {0, 1, 2, 3, 15, 16, 17, 1000, 4097}) {
            long[] keys = lot.longs(count, -50, 50).toArray();
            if (count > 2) {
                keys[0] = Long.MAX_VALUE;
                keys[count / 2] = Long.MIN_VALUE;
            }
            assertArrayEquals(IntStream.range(0, count).boxed().sorted(Comparator.comparingLong(i -> keys[i])).mapToInt(i -> i).toArray(),
                SortedKeys.order(keys));
        }
    }
}
