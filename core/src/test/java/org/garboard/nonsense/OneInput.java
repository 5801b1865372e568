package org.garboard.nonsense;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;

/**
 * One input of a long run. It may take a second of its own thread's processor time: what else the machine does, compiling
 * and collecting garbage count nothing, so that the limit means the same on a busy machine.
 */
public final class OneInput {
    private static final long MOST_NANOSECONDS = 1_000_000_000L;
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    private OneInput() {
    }

    /** Lets it be read, and throws an error if that took too long. */
    public static void read(Runnable reader) {
        long begun = THREADS.getCurrentThreadCpuTime();
        reader.run();
        long taken = THREADS.getCurrentThreadCpuTime() - begun;
        if (taken > MOST_NANOSECONDS) {
            throw new AssertionError("the input took " + taken / 1_000_000 + " ms of processor time; " + MOST_NANOSECONDS / 1_000_000 + " ms is the most");
        }
    }
}
