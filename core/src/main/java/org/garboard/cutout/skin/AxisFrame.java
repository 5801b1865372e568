package org.garboard.cutout.skin;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.solid.Placement;

/**
 * The frame of a part: origin on the outside of the skin, along (aft), across (to starboard) and up (into the
 * boat), the axis of its hole; u, v, w along these [m]. Not for several threads at once.
 */
public final class AxisFrame implements Placement {
    private static final double CLOSE = 1e-12;
    private static final int MOST_STEPS = 40;

    private final Skin skin;
    private final Vector3D origin;
    private final Vector3D along;
    private final Vector3D across;
    private final Vector3D up;
    private final Vector3D normal;
    private final double[] face = new double[Skin.SIZE];
    private final double[] spot = new double[3];

    private AxisFrame(Skin skin, Vector3D origin, Vector3D along, Vector3D across) {
        this.skin = skin;
        this.origin = origin;
        this.along = along;
        this.across = across;
        this.up = along.cross(across);
        double[] own = face(skin, origin.getX(), origin.getY());
        this.normal = Vector3D.of(-own[1], -own[2], 1).normalize();
    }

    /**
     * The axis square to the skin, along in a plane y = constant.
     *
     * @throws IllegalArgumentException off the skin
     */
    public static AxisFrame squareToSkin(Skin skin, double x, double y) {
        double[] face = face(skin, x, y);
        Vector3D along = Vector3D.of(1, 0, face[1]).normalize();
        Vector3D up = Vector3D.of(-face[1], -face[2], 1).normalize();
        return new AxisFrame(skin, Vector3D.of(x, y, face[0]), along, up.cross(along));
    }

    /**
     * The plane level athwartships.
     *
     * @param slope dz/dx of the plane as an angle [rad], positive rising aft
     * @param yaw of along in that plane, positive towards starboard going aft [rad]
     * @throws IllegalArgumentException off the skin
     */
    public static AxisFrame levelAthwart(Skin skin, double x, double y, double slope, double yaw) {
        double[] face = face(skin, x, y);
        Vector3D aft = Vector3D.of(Math.cos(slope), 0, Math.sin(slope));
        Vector3D starboard = Vector3D.of(0, 1, 0);
        Vector3D along = aft.multiply(Math.cos(yaw)).add(starboard.multiply(Math.sin(yaw)));
        Vector3D across = starboard.multiply(Math.cos(yaw)).subtract(aft.multiply(Math.sin(yaw)));
        return new AxisFrame(skin, Vector3D.of(x, y, face[0]), along, across);
    }

    /**
     * The plane through a skin's tangent athwart, its after end turned down from the tangent along by an angle.
     *
     * @throws IllegalArgumentException off the skin
     */
    public static AxisFrame leaningAft(Skin skin, double x, double y, double down) {
        AxisFrame square = squareToSkin(skin, x, y);
        Vector3D along = square.along.multiply(Math.cos(down)).subtract(square.up.multiply(Math.sin(down)));
        return new AxisFrame(skin, square.origin, along, square.across);
    }

    private static double[] face(Skin skin, double x, double y) {
        double[] face = new double[Skin.SIZE];
        if (!skin.at(x, y, face)) {
            throw new IllegalArgumentException("no skin at x = " + x + " m, y = " + y + " m");
        }
        return face;
    }

    public Skin skin() {
        return skin;
    }

    public Vector3D origin() {
        return origin;
    }

    public Vector3D along() {
        return along;
    }

    public Vector3D across() {
        return across;
    }

    /** Unit vector of the axis, into the boat. */
    public Vector3D up() {
        return up;
    }

    @Override
    public void place(double u, double v, double w, double[] out, int at) {
        out[at] = origin.getX() + u * along.getX() + v * across.getX() + w * up.getX();
        out[at + 1] = origin.getY() + u * along.getY() + v * across.getY() + w * up.getY();
        out[at + 2] = origin.getZ() + u * along.getZ() + v * across.getZ() + w * up.getZ();
    }

    /** A place of the frame in the hull frame [m]. */
    public Vector3D toHull(double u, double v, double w) {
        place(u, v, w, spot, 0);
        return Vector3D.of(spot[0], spot[1], spot[2]);
    }

    /** Height of the outside of the skin over the frame's plane, along the axis [m]; NaN off the skin. */
    public double outside(double u, double v) {
        return inside(u, v, 0);
    }

    /** Height of the plane that touches the skin at the origin [m]. */
    double touching(double u, double v) {
        return -(u * along.dot(normal) + v * across.dot(normal)) / up.dot(normal);
    }

    /**
     * Height of the face that lies so far inside the skin, square to it [m]; NaN off the skin. Each round meets
     * the axis with the plane that touches that face where the last round came to it.
     */
    public double inside(double u, double v, double thickness) {
        double w = thickness;
        double footX = origin.getX() + u * along.getX() + v * across.getX();
        double footY = origin.getY() + u * along.getY() + v * across.getY();
        for (int i = 0; i < MOST_STEPS; i++) {
            if (!skin.at(footX, footY, face)) {
                return Double.NaN;
            }
            double size = Math.sqrt(1 + face[1] * face[1] + face[2] * face[2]);
            double nx = -face[1] / size;
            double ny = -face[2] / size;
            double nz = 1 / size;
            place(u, v, 0, spot, 0);
            double off = (footX + thickness * nx - spot[0]) * nx + (footY + thickness * ny - spot[1]) * ny
                + (face[0] + thickness * nz - spot[2]) * nz;
            double next = off / (nx * up.getX() + ny * up.getY() + nz * up.getZ());
            place(u, v, next, spot, 0);
            double moveX = spot[0] - thickness * nx - footX;
            double moveY = spot[1] - thickness * ny - footY;
            footX += moveX;
            footY += moveY;
            boolean settled = Math.abs(next - w) < CLOSE && Math.abs(moveX) + Math.abs(moveY) < 1e-9;
            w = next;
            if (settled && i > 0) {
                return w;
            }
        }
        return Double.NaN;
    }

    /**
     * Height of the plane so far inside that which touches the skin over a place of the frame [m]; NaN off the skin. The
     * inside of a plane skin, beside an edge too; of a bent one but for the square of what the axis leans from its normal.
     */
    public double inPlane(double u, double v, double thickness) {
        double w = outside(u, v);
        place(u, v, w == w ? w : 0, spot, 0);
        if (w != w || !skin.at(spot[0], spot[1], face)) {
            return Double.NaN;
        }
        double size = Math.sqrt(1 + face[1] * face[1] + face[2] * face[2]);
        return w + thickness * size / (up.getZ() - face[1] * up.getX() - face[2] * up.getY());
    }

    /** Largest curvature of the skin at a place of the plane [1/m]; NaN off the skin. */
    public double bend(double u, double v) {
        double w = outside(u, v);
        place(u, v, w == w ? w : 0, spot, 0);
        return w == w && skin.at(spot[0], spot[1], face) ? face[3] : Double.NaN;
    }

    /** Unit normal of the skin into the boat, at the origin. */
    public Vector3D normal() {
        return normal;
    }
}
