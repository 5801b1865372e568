package org.garboard.cli;

import java.util.concurrent.CancellationException;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CompletionException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.TimeUnit;
import java.util.function.IntSupplier;

/** The processors that a command works on: all that runs side by side in it runs in one pool of so many threads. */
final class Processors {

    private Processors() {
    }

    /**
     * Carries out a command. Where the thread that asks is interrupted, so is the command; it is waited for all the same, as it
     * may be writing.
     *
     * @return what the command returned
     */
    static int carryOut(int count, IntSupplier command) {
        ForkJoinPool pool = new ForkJoinPool(count);
        CompletableFuture<Integer> code = new CompletableFuture<>();
        pool.execute(() -> {
            try {
                code.complete(command.getAsInt());
            } catch (RuntimeException | Error fault) {
                code.completeExceptionally(fault);
            }
        });
        try {
            return code.get();
        } catch (InterruptedException stop) {
            pool.shutdownNow();
            awaitEnd(pool);
            Thread.currentThread().interrupt();
            code.completeExceptionally(new CancellationException());
            return joined(code);
        } catch (ExecutionException fault) {
            return joined(code);
        } finally {
            pool.shutdown();
        }
    }

    private static void awaitEnd(ForkJoinPool pool) {
        while (!pool.isTerminated()) {
            try {
                pool.awaitTermination(1, TimeUnit.MINUTES);
            } catch (InterruptedException again) {
                // it was told already
            }
        }
    }

    private static int joined(CompletableFuture<Integer> code) {
        try {
            return code.join();
        } catch (CompletionException fault) {
            if (fault.getCause() instanceof Error error) {
                throw error;
            }
            throw (RuntimeException) fault.getCause();
        }
    }
}
