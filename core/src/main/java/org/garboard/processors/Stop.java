package org.garboard.processors;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;

/** Whether the work that goes on here was told to end, by its pool being shut: a pool wipes interrupts of its threads out. */
public final class Stop {

    private Stop() {
    }

    /**
     * Goes on, unless it was told.
     *
     * @throws CancellationException where it was
     */
    public static void heed() {
        ForkJoinPool pool = ForkJoinTask.getPool();
        if (pool != null && pool.isShutdown()) {
            throw new CancellationException();
        }
    }
}
