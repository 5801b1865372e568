package org.garboard.inside;

/**
 * From one length to another.
 *
 * @param from the smaller [m]
 * @param to the larger [m]
 */
public record Span(double from, double to) {
    public Span {
        if (!(from < to)) {
            throw new IllegalArgumentException("a span from " + from + " to " + to + " m; it must run from less to more");
        }
    }

    /** 0 where they touch or overlap. */
    double gap(Span other) {
        return Math.max(0, Math.max(other.from - to, from - other.to));
    }
}
