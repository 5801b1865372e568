package org.garboard.drawing.graph;

/**
 * A place of a graph in its own figures.
 *
 * @param along the level axis
 * @param value NaN where none is known
 */
public record Reading(double along, double value) {
    /** Between two pieces of a curve. */
    public static final Reading NONE = new Reading(Double.NaN, Double.NaN);

    boolean isKnown() {
        return !Double.isNaN(along) && !Double.isNaN(value);
    }
}
