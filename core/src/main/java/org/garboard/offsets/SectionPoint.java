package org.garboard.offsets;

/**
 * A point of a section that the table gives.
 *
 * @param y half-breadth [m]
 * @param z height above base [m]
 * @param line index of the table row it came from; of a named line, the row of its heights
 */
public record SectionPoint(double y, double z, int line) {
}
