package org.garboard.session;

import java.io.PrintWriter;
import java.util.function.Consumer;

/** What a session asks: one command line, carried out on the thread that asks, which is interrupted when it is cancelled. */
@FunctionalInterface
public interface Program {

    /**
     * Carries out one command line.
     *
     * @param progress is told what is being done
     * @return the exit code, {@link Session#CANCELLED} where it gave up because its thread was interrupted
     */
    int run(PrintWriter out, PrintWriter err, Consumer<String> progress, String... words);
}
