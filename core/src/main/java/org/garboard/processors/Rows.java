package org.garboard.processors;

import java.util.stream.IntStream;

/** Work on rows of numbers, shared out in blocks. A row's result depends on no other row, so it is the same on any number of processors. */
public final class Rows {
    private static final int BLOCK = 16;

    /** Does the rows from, inclusive, to, exclusive. */
    public interface Work {
        void rows(int from, int to);
    }

    private Rows() {
    }

    /**
     * Does all rows; gives up between two blocks where the work was told to end.
     *
     * @param work asked for each block, which may have scratch numbers of its own
     */
    public static void each(int rows, Work work) {
        IntStream.range(0, (rows + BLOCK - 1) / BLOCK).parallel()
            .forEach(block -> {
                Stop.heed();
                work.rows(block * BLOCK, Math.min(rows, (block + 1) * BLOCK));
            });
    }
}
