package org.garboard.cli;

/** Is told how far long work has come. */
@FunctionalInterface
interface Progress {
    /** Tells nobody. */
    Progress QUIET = words -> { };

    /** @param words what is done next */
    void stage(String words);

    /** So many of all are done. */
    default void done(int count, int all) {
        stage(count + " of " + all);
    }

    /** Prints results without running into what is told here. */
    default void aside(Runnable print) {
        print.run();
    }
}
