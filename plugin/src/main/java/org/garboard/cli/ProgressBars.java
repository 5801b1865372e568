package org.garboard.cli;

import java.io.PrintStream;
import java.util.Optional;
import me.tongfei.progressbar.DelegatingProgressBarConsumer;
import me.tongfei.progressbar.ProgressBar;
import me.tongfei.progressbar.ProgressBarBuilder;
import me.tongfei.progressbar.ProgressBarStyle;

/** A bar in one line of a terminal, beginning with the second stage: what has only one is soon done. */
final class ProgressBars implements Progress, AutoCloseable {
    /** The launcher sets it where standard error is a terminal. */
    private static final String TERMINAL = "garboard.terminal";
    /** Columns that every terminal has. */
    private static final int WIDTH = 79;
    private static final long NOT_KNOWN = -1;

    private final PrintStream terminal;
    private int stages;
    private Optional<ProgressBar> bar = Optional.empty();

    ProgressBars(PrintStream terminal) {
        this.terminal = terminal;
    }

    /** Whether somebody watches. */
    static boolean areWanted() {
        return Boolean.getBoolean(TERMINAL);
    }

    @Override
    public synchronized void stage(String words) {
        stages++;
        if (stages > 1) {
            bar(NOT_KNOWN).setExtraMessage(words);
        }
    }

    @Override
    public synchronized void done(int count, int all) {
        bar(all).maxHint(all).stepTo(count);
    }

    @Override
    public synchronized void aside(Runnable print) {
        bar.ifPresent(shown -> {
            shown.pause();
            wipe();
        });
        print.run();
        bar.ifPresent(ProgressBar::resume);
    }

    private ProgressBar bar(long all) {
        if (bar.isEmpty()) {
            bar = Optional.of(new ProgressBarBuilder().setTaskName("garboard").setInitialMax(all).setStyle(ProgressBarStyle.ASCII)
                .setConsumer(new DelegatingProgressBarConsumer(line -> terminal.print("\r" + line), WIDTH)).build());
        }
        return bar.get();
    }

    @Override
    public synchronized void close() {
        bar.ifPresent(shown -> {
            shown.close();
            wipe();
        });
        bar = Optional.empty();
    }

    private void wipe() {
        terminal.print("\r" + " ".repeat(WIDTH) + "\r");
        terminal.flush();
    }
}
