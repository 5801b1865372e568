package org.garboard.offsets;

/**
 * One filled cell of the table.
 *
 * @param station index into the table's stations
 * @param value height or half-breadth [m]
 */
public record Entry(int station, double value) {
}
