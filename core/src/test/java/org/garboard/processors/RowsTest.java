package org.garboard.processors;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RowsTest {

    @ParameterizedTest
    @ValueSource(ints = {0, 1, 15, 16, 17, 1000})
    void law_everyRowIsDoneOnce(int rows) {
        int[] done = new int[rows];
        int[] once = new int[rows];
        Arrays.fill(once, 1);
        SoMany.processors(3, () -> {
            Rows.each(rows, (from, to) -> {
                for (int row = from; row < to; row++) {
                    done[row]++;
                }
            });
            return null;
        });
        assertArrayEquals(once, done);
    }

    /** On one processor nothing runs beside the thread that asks, and on three nothing outside their pool. */
    @Test
    void law_workStaysInThePoolOfWhoAsks() {
        Set<Thread> at = ConcurrentHashMap.newKeySet();
        Thread asked = SoMany.processors(1, () -> {
            Rows.each(10_000, (from, to) -> at.add(Thread.currentThread()));
            return Thread.currentThread();
        });
        assertEquals(Set.of(asked), at);
        Set<ForkJoinPool> pools = ConcurrentHashMap.newKeySet();
        ForkJoinPool three = SoMany.processors(3, () -> {
            Rows.each(10_000, (from, to) -> pools.add(ForkJoinTask.getPool()));
            return ForkJoinTask.getPool();
        });
        assertEquals(Set.of(three), pools);
    }
}
