package org.garboard.offsets;

/**
 * A transverse plane of the table.
 *
 * @param name as the heading prints it, "3" or "3 1/2"
 * @param x distance aft of the table's origin [m]
 */
public record Station(String name, double x) {
}
