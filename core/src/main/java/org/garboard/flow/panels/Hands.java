package org.garboard.flow.panels;

import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.function.IntFunction;

/**
 * Rows of work shared over threads. Every row stands for itself and is summed in one order, so that the result is
 * the same whatever their number.
 */
final class Hands {

    /** What one thread does to one row. */
    interface Work {
        void row(int row);
    }

    private Hands() {
    }

    /** @param work made once for each thread, which may keep scratch numbers in it */
    static void share(int rows, int threads, IntFunction<Work> work) {
        int hands = Math.max(1, Math.min(threads, rows));
        if (hands == 1) {
            run(work.apply(0), 0, 1, rows);
            return;
        }
        ExecutorService pool = Executors.newFixedThreadPool(hands);
        try {
            List<Future<?>> parts = new ArrayList<>();
            for (int hand = 0; hand < hands; hand++) {
                Work own = work.apply(hand);
                int first = hand;
                parts.add(pool.submit(() -> run(own, first, hands, rows)));
            }
            for (Future<?> part : parts) {
                part.get();
            }
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException("stopped while the flow was worked out", stop);
        } catch (ExecutionException fault) {
            throw new IllegalStateException(fault.getCause());
        } finally {
            pool.shutdownNow();
        }
    }

    private static void run(Work work, int first, int step, int rows) {
        for (int row = first; row < rows; row += step) {
            work.row(row);
        }
    }
}
