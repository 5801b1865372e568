package org.garboard.takeoff;

/**
 * A point of the skin as it was measured.
 *
 * @param row of the list it stands in, for messages
 * @param station index of its station
 * @param side of the boat
 * @param y to starboard of the stretched line [m]; negative to port of it
 * @param z up from the level [m]
 * @param mark what it is called
 */
public record TakenPoint(int row, int station, Side side, double y, double z, Mark mark) {
}
