package org.garboard.cutout.transom;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.Curve;
import org.garboard.hull.EndFace;
import org.garboard.hull.Hull;
import org.garboard.hull.HullCurves;
import org.garboard.solid.Placement;
import org.garboard.units.Angle;

/**
 * The plane of a board on the transom: origin on the transom's lower edge at the body's middle, u to starboard, v up the
 * transom, w aft [m]. On a round transom its chord.
 */
final class TransomPlane implements Placement {
    private final List<Vector3D> edge;
    private final EndFace face;
    private final Vector3D origin;
    private final Vector3D across;
    private final Vector3D up;
    private final Vector3D aft;

    private TransomPlane(List<Vector3D> edge, EndFace face, Vector3D origin, Vector3D across, Vector3D up) {
        this.edge = edge;
        this.face = face;
        this.origin = origin;
        this.across = across;
        this.aft = across.cross(up).normalize();
        this.up = aft.cross(across);
    }

    /**
     * At a place of a hull's transom; empty where it has no lower edge there.
     *
     * @param y of the body's middle, to starboard
     * @param width of the board
     * @param height of the board
     */
    static Optional<TransomPlane> at(Hull hull, double y, double width, double height) {
        List<Vector3D> edge = new ArrayList<>();
        for (Curve curve : new HullCurves(hull).afterEdge()) {
            edge.addAll(curve.points());
        }
        EndFace face = hull.panels().get(hull.panels().size() - 1).aft();
        Vector3D foot = on(edge, y);
        if (foot == null) {
            return Optional.empty();
        }
        double low = foot.getZ();
        Vector3D across = Vector3D.of(face.x(Math.abs(y + width / 2), low) - face.x(Math.abs(y - width / 2), low), width, 0).normalize();
        Vector3D up = Vector3D.of(face.x(Math.abs(y), low + height) - face.x(Math.abs(y), low), 0, height).normalize();
        return Optional.of(new TransomPlane(edge, face, foot, across, up));
    }

    /** The lowest place of the edge at a half-breadth, in the hull frame; null beyond it. */
    private static Vector3D on(List<Vector3D> edge, double y) {
        double side = Math.abs(y);
        for (int i = 1; i < edge.size(); i++) {
            Vector3D from = edge.get(i - 1);
            Vector3D to = edge.get(i);
            if (side >= from.getY() && side <= to.getY() && to.getY() > from.getY()) {
                Vector3D at = from.lerp(to, (side - from.getY()) / (to.getY() - from.getY()));
                return Vector3D.of(at.getX(), y, at.getZ());
            }
        }
        return null;
    }

    @Override
    public void place(double u, double v, double w, double[] out, int at) {
        Vector3D place = origin.add(across.multiply(u)).add(up.multiply(v)).add(aft.multiply(w));
        out[at] = place.getX();
        out[at + 1] = place.getY();
        out[at + 2] = place.getZ();
    }

    Vector3D origin() {
        return origin;
    }

    /** From plumb, positive where the transom's top stands farther aft. */
    Angle rake() {
        return Angle.ofRadians(Math.atan2(up.getX(), up.getZ()));
    }

    /** How far along the plane one comes for a height [m]. */
    double upFor(double height) {
        return height / up.getZ();
    }

    /** Height of the transom's lower edge in the plane at a place across; NaN where it has none. */
    double edge(double u) {
        Vector3D at = on(edge, origin.getY() + u * across.getY());
        return at == null ? Double.NaN : at.subtract(origin).dot(up);
    }

    /** Height of the transom's lower edge over base at a place across [m]. */
    double edgeHeight(double u) {
        Vector3D at = on(edge, origin.getY() + u * across.getY());
        return at == null ? Double.NaN : at.getZ();
    }

    /** How far the transom stands abaft of the plane at a place of it, square to it; below 0 ahead of it [m]. */
    double stands(double u, double v) {
        Vector3D at = origin.add(across.multiply(u)).add(up.multiply(v));
        return (face.x(Math.abs(at.getY()), at.getZ()) - at.getX()) * aft.getX();
    }

    /** Aftermost x of the transom between two heights over base, across a width [m]. */
    double aftermost(double low, double high, double width) {
        double most = Double.NEGATIVE_INFINITY;
        for (int i = -1; i <= 1; i++) {
            double y = Math.abs(origin.getY() + i * width / 2);
            most = Math.max(most, Math.max(face.x(y, low), face.x(y, high)));
        }
        return most;
    }

    /** Height of the top of the transom over base at the outermost place of its edge [m]. */
    double sheer() {
        return edge.stream().mapToDouble(Vector3D::getZ).max().orElseThrow();
    }
}
