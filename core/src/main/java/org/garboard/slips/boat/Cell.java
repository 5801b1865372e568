package org.garboard.slips.boat;

/**
 * A filled cell of the table.
 *
 * @param row index of the table's row
 * @param station index of the station
 * @param written what stands there [m]
 */
public record Cell(int row, int station, double written) {
}
