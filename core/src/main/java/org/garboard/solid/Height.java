package org.garboard.solid;

/** A surface over a plane: its height at a place (u, v) [m]. */
@FunctionalInterface
public interface Height {
    double at(double u, double v);

    /** A plane at one height. */
    static Height level(double height) {
        return (u, v) -> height;
    }
}
