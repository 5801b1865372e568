package org.garboard.processors;

import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.ForkJoinTask;

/** Whether the work that goes on here was told to end: its thread is interrupted, or its pool shut, which wipes interrupts out. */
public final class Stop {

    private Stop() {
    }

    public static boolean isTold() {
        ForkJoinPool pool = ForkJoinTask.getPool();
        return Thread.currentThread().isInterrupted() || pool != null && pool.isShutdown();
    }

    /**
     * Goes on, unless it was told.
     *
     * @throws CancellationException where it was
     */
    public static void heed() {
        if (isTold()) {
            throw new CancellationException();
        }
    }
}
