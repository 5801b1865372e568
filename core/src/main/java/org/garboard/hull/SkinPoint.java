package org.garboard.hull;

import org.garboard.units.Angle;

/**
 * A point of the outside of the skin and what the skin does there. Hull frame, metres.
 *
 * @param x aft of station 0
 * @param y to starboard
 * @param z above base
 * @param nx unit normal into the water, x
 * @param ny unit normal into the water, y
 * @param nz unit normal into the water, z
 * @param deadrise positive when the bottom rises outboard
 * @param buttockSlope dz/dx as an angle, positive when the bottom rises aft
 * @param k1 larger principal curvature [1/m], positive where the skin bulges into the water
 * @param k2 smaller principal curvature [1/m]
 */
public record SkinPoint(double x, double y, double z, double nx, double ny, double nz,
                        Angle deadrise, Angle buttockSlope, double k1, double k2) {
}
