package org.garboard.takeoff;

/**
 * A place of the skin that lies in the water's surface when the boat floats.
 *
 * @param row of the list it stands in
 * @param x aft of the datum [m]
 * @param y to starboard of the stretched line [m]
 * @param z up from the level [m]
 */
public record FloatMark(int row, double x, double y, double z) {
}
