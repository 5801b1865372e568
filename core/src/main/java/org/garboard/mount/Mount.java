package org.garboard.mount;

/** One way for a transducer to go on or into a bottom. */
public sealed interface Mount permits FlushThroughHull, KeelPocket {

    /** As it stands on sheets and in tables. */
    String words();
}
