package org.garboard.mount;

/**
 * What a mount covers of the bottom, from its middle, in plan. Lengths [m].
 *
 * @param ahead to its forward end
 * @param abaft to its after end
 * @param width athwartships
 */
public record Extent(double ahead, double abaft, double width) {

    /** Of a footprint, as if it lay level, which is a little more than it covers. */
    static Extent about(Footprint footprint) {
        return new Extent(footprint.length() / 2, footprint.length() / 2, footprint.width());
    }
}
