package org.garboard.exchange;

import java.util.function.Supplier;

/** What is dear to make and never changes: made when it is first asked for, and kept. */
final class Once<T> {
    private final Supplier<T> maker;
    private T made;

    Once(Supplier<T> maker) {
        this.maker = maker;
    }

    synchronized T get() {
        if (made == null) {
            made = maker.get();
        }
        return made;
    }
}
