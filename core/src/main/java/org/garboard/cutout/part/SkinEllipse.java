package org.garboard.cutout.part;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.units.Angle;

/**
 * What a round hole becomes in a skin that it does not meet squarely: an ellipse, as wide as the hole is round and
 * longer by 1 / cos of the lean. Exact on a plane.
 *
 * @param minor axis [m], the hole's diameter
 * @param major axis [m]
 * @param lean of the hole's axis from the skin's normal
 * @param direction of the major axis on the skin, from aft towards starboard as seen from outside; 0 where the
 *     hole is round
 */
public record SkinEllipse(double minor, double major, Angle lean, Angle direction) {
    private static final double SQUARE = 1e-9;

    /**
     * The ellipse of a hole.
     *
     * @param diameter of the hole [m]
     * @param axis of the hole, unit vector
     * @param normal of the skin, unit vector into the boat
     */
    public static SkinEllipse of(double diameter, Vector3D axis, Vector3D normal) {
        double cos = Math.abs(axis.dot(normal));
        Vector3D across = axis.subtract(normal.multiply(axis.dot(normal)));
        double sin = across.norm();
        if (sin < SQUARE) {
            return new SkinEllipse(diameter, diameter, Angle.ofRadians(0), Angle.ofRadians(0));
        }
        Vector3D aft = Vector3D.of(1, 0, -normal.getX() / normal.getZ()).normalize();
        double angle = Math.atan2(across.dot(normal.cross(aft)), across.dot(aft));
        double turned = angle <= -Math.PI / 2 ? angle + Math.PI : angle > Math.PI / 2 ? angle - Math.PI : angle;
        return new SkinEllipse(diameter, diameter / cos, Angle.ofRadians(Math.atan2(sin, cos)), Angle.ofRadians(turned));
    }
}
