package org.garboard.cutout;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.Hull;
import org.garboard.hull.Panel;

/**
 * The pocket's own frame: origin where its middle meets the keel line, along (aft, parallel to the
 * keel line under the floor), across (to starboard, level) and up (square to both, into the boat). Metres.
 */
final class PocketFrame {
    private static final double CLOSE = 1e-12;
    private static final int MOST_STEPS = 60;

    private final Hull hull;
    private final Vector3D origin;
    private final double cos;
    private final double sin;
    private final double[] point = new double[Panel.POINT_SIZE];

    /**
     * A frame along the chord of the keel line.
     *
     * @param x of the pocket's middle [m]
     * @param length over which the keel line is chorded [m]
     */
    PocketFrame(Hull hull, double x, double length) {
        double fore = hull.keel().z(x - length / 2);
        double aft = hull.keel().z(x + length / 2);
        double slope = Math.atan2(aft - fore, length);
        this.hull = hull;
        this.origin = Vector3D.of(x, 0, hull.keel().z(x));
        this.cos = Math.cos(slope);
        this.sin = Math.sin(slope);
    }

    Vector3D origin() {
        return origin;
    }

    /** Slope of the frame fore and aft, dz/dx [rad]. */
    double slope() {
        return Math.atan2(sin, cos);
    }

    Vector3D toHull(double along, double across, double up) {
        return Vector3D.of(origin.getX() + along * cos - up * sin, across, origin.getZ() + along * sin + up * cos);
    }

    /**
     * How far the skin lies above the origin's plane, square to it; NaN off the skin. Secant steps
     * along the ray: it stands within a few degrees of plumb, so each step gains digits quickly.
     */
    double rise(double along, double across) {
        double x = origin.getX() + along * cos;
        double z = origin.getZ() + along * sin;
        double up = 0;
        for (int i = 0; i < MOST_STEPS; i++) {
            double miss = hull.height(x - up * sin, across) - (z + up * cos);
            if (!(Math.abs(miss) > CLOSE)) {
                return miss == miss ? up : Double.NaN;
            }
            up += miss * cos;
        }
        return up;
    }

    /** Area of skin over area of the frame's plane at a place; 1 where the skin is parallel to it. */
    double spread(double along, double across) {
        Vector3D at = toHull(along, across, rise(along, across));
        if (!hull.evaluate(at.getX(), across, point, 0)) {
            return Double.NaN;
        }
        double nx = point[Panel.NX];
        double nz = point[Panel.NZ];
        return 1 / Math.abs(nz * cos - nx * sin);
    }
}
