package org.garboard.siting;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;

/** Work on the rows of a grid, in blocks shared out over threads. A row's result depends on no other row. */
final class Rows {
    private static final int BLOCK = 16;

    /** Does the rows from, inclusive, to, exclusive. */
    interface Work {
        void rows(int from, int to);
    }

    private Rows() {
    }

    static void each(int rows, int threads, Work work) {
        if (threads <= 1) {
            work.rows(0, rows);
            return;
        }
        List<Callable<Void>> blocks = new ArrayList<>();
        for (int from = 0; from < rows; from += BLOCK) {
            int first = from;
            int end = Math.min(rows, from + BLOCK);
            blocks.add(() -> {
                work.rows(first, end);
                return null;
            });
        }
        ExecutorService hands = Executors.newFixedThreadPool(threads);
        try {
            for (Future<Void> block : hands.invokeAll(blocks)) {
                block.get();
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("the search of the bottom was interrupted", e);
        } catch (ExecutionException e) {
            throw new IllegalStateException("the search of the bottom failed: " + e.getCause(), e.getCause());
        } finally {
            hands.shutdownNow();
        }
    }
}
