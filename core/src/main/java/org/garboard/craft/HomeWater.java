package org.garboard.craft;

/**
 * The water that a boat is used in.
 *
 * @param celsius its temperature
 * @param salinity grams of salt to a kilogram of water; 0 is fresh
 */
public record HomeWater(double celsius, double salinity) {
    /** Of the sea, as the towing tanks take it: {@code org.garboard.flow.water.Water} says why these digits. */
    public static final double SEA_SALINITY = 35.0623;
    /** Sea water at 15 degrees: what the towing tanks compare in. */
    public static final HomeWater SEA = new HomeWater(15, SEA_SALINITY);
}
