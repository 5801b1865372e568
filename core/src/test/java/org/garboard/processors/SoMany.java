package org.garboard.processors;

import java.util.concurrent.Callable;
import java.util.concurrent.ForkJoinPool;

/** Work done on so many processors. */
public final class SoMany {

    private SoMany() {
    }

    public static <T> T processors(int count, Callable<T> work) {
        ForkJoinPool pool = new ForkJoinPool(count);
        try {
            return pool.submit(work).join();
        } finally {
            pool.shutdown();
        }
    }
}
