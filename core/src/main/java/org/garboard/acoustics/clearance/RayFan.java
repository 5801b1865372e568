package org.garboard.acoustics.clearance;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.units.Angle;

/**
 * The rays of one beam: they leave the face all over and part from the axis up to the half angle, so that the
 * outermost leave the face's rim along the edge of the beam and no two cross. Owns its arrays.
 */
public final class RayFan {
    /** Where x, y, z of a start, then of a direction of length 1, stand among a ray's numbers. */
    static final int SIZE = 6;
    /** An axis so near to x has no direction of its own across: sine of the angle between. */
    private static final double ALONG = 1e-3;

    private final double[] numbers;
    private final double spacing;

    private RayFan(double[] numbers, double spacing) {
        this.numbers = numbers;
        this.spacing = spacing;
    }

    /**
     * A ray along the axis and {@code rings} of {@code spokes} rays, each ring the outer edge of the same share of
     * the beam, the last its own edge.
     *
     * @param face middle of the face
     * @param normal of the face, out of it: of a flush housing that of the skin, whatever way its element leans
     * @param axis where the beam looks, of any length, less than a right angle from the normal
     * @param faceRadius of the face [m]; 0 for a point
     * @param halfAngle of the beam, more than 0 and less than a right angle
     */
    public static RayFan cone(Vector3D face, Vector3D normal, Vector3D axis, double faceRadius, Angle halfAngle, int rings, int spokes) {
        if (!(faceRadius >= 0 && halfAngle.radians() > 0 && halfAngle.radians() < Math.PI / 2 && rings > 0 && spokes > 2
                && axis.dot(normal) > 0)) {
            throw new IllegalArgumentException("a fan of " + rings + " rings and " + spokes + " spokes, half angle "
                + halfAngle.degrees() + " deg, from a face of " + faceRadius + " m; it needs a ring, three spokes and a cone, and its axis leads out of the face");
        }
        Vector3D w = axis.normalize();
        Vector3D u = ahead(w);
        Vector3D v = w.cross(u);
        double[] numbers = new double[SIZE * (1 + rings * spokes)];
        put(numbers, 0, face, w);
        double before = 0;
        double widest = 0;
        for (int ring = 1; ring <= rings; ring++) {
            double share = (double) ring / rings;
            double cos = 1 - share * (1 - Math.cos(halfAngle.radians()));
            double angle = Math.acos(cos);
            widest = Math.max(widest, angle - before);
            before = angle;
            for (int spoke = 0; spoke < spokes; spoke++) {
                double turn = 2 * Math.PI * spoke / spokes;
                Vector3D out = Vector3D.Sum.create().addScaled(Math.cos(turn), u).addScaled(Math.sin(turn), v).get();
                // along the beam onto the face, which need not be square to it
                Vector3D onFace = out.add(-out.dot(normal) / w.dot(normal), w);
                Vector3D start = face.add(faceRadius * Math.sqrt(share), onFace);
                Vector3D direction = Vector3D.Sum.create().addScaled(cos, w).addScaled(Math.sin(angle), out).get();
                put(numbers, SIZE * (1 + (ring - 1) * spokes + spoke), start, direction);
            }
        }
        return new RayFan(numbers, Math.max(widest, 2 * Math.PI / spokes * Math.sin(halfAngle.radians())));
    }

    /** Square to the axis and as near as may be to x, so that the fan of a mirrored axis is the mirror image of the fan. */
    private static Vector3D ahead(Vector3D w) {
        Vector3D along = Vector3D.Unit.PLUS_X.reject(w);
        return along.norm() > ALONG ? along.normalize() : w.orthogonal();
    }

    private static void put(double[] numbers, int at, Vector3D start, Vector3D direction) {
        numbers[at] = start.getX();
        numbers[at + 1] = start.getY();
        numbers[at + 2] = start.getZ();
        numbers[at + 3] = direction.getX();
        numbers[at + 4] = direction.getY();
        numbers[at + 5] = direction.getZ();
    }

    public int rays() {
        return numbers.length / SIZE;
    }

    /** Largest angle between neighbouring rays [rad]: times a distance, the size of what may be missed there. */
    public double spacing() {
        return spacing;
    }

    /** x, y, z of the start for {@code axis} 0, 1, 2 [m]. */
    double start(int ray, int axis) {
        return numbers[SIZE * ray + axis];
    }

    /** x, y, z of the direction for {@code axis} 0, 1, 2. */
    double direction(int ray, int axis) {
        return numbers[SIZE * ray + 3 + axis];
    }
}
