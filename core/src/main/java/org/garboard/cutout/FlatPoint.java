package org.garboard.cutout;

/**
 * A point of a flat development: u aft along the keel line from the site, v along the skin to
 * starboard from it [m].
 */
public record FlatPoint(double u, double v) {
}
