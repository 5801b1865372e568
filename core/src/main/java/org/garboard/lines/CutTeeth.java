package org.garboard.lines;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.hull.Panel;

/**
 * Teeth on a line that a plane cuts out of a panel, from the skin's own derivatives.
 *
 * <p>With n the skin's normal, m the plane's and t the line's tangent, the skin's curvature along t is
 * that of the line times |n x m|: Meusnier's theorem (do Carmo, <i>Differential Geometry of Curves and
 * Surfaces</i>, section 3.2, from memory).
 */
final class CutTeeth {
    /** A plane that touches the skin instead of cutting it (sine of the angle) shows no curvature. */
    private static final double TOUCHES = 1e-6;

    private final Panel panel;
    private final Vector3D square;
    private final double[] at = new double[Panel.DERIVATIVES];

    CutTeeth(Panel panel, Vector3D square) {
        this.panel = panel;
        this.square = square;
    }

    List<Tooth> on(List<Vector3D> feet) {
        List<Tooth> teeth = new ArrayList<>();
        for (Vector3D foot : feet) {
            panel.differentiate(foot.getX(), PanelPlace.across(panel, foot), at, 0);
            Vector3D along = Vector3D.of(1, at[2], at[3]);
            Vector3D across = Vector3D.of(0, at[4], at[5]);
            Vector3D normal = across.cross(along);
            if (normal.norm() > 0) {
                tooth(foot, across, normal.normalize(), teeth);
            }
        }
        return teeth;
    }

    private void tooth(Vector3D foot, Vector3D across, Vector3D normal, List<Tooth> teeth) {
        Vector3D tangent = normal.cross(square);
        double cut = tangent.norm();
        if (cut < TOUCHES) {
            return;
        }
        tangent = tangent.normalize();
        double p = tangent.getX();
        double q = tangent.subtract(Vector3D.of(p, p * at[2], p * at[3])).dot(across) / across.normSq();
        double bend = p * p * (at[6] * normal.getY() + at[7] * normal.getZ())
            + 2 * p * q * (at[8] * normal.getY() + at[9] * normal.getZ())
            + q * q * (at[10] * normal.getY() + at[11] * normal.getZ());
        double curvature = bend / cut;
        Vector3D outward = square.cross(tangent);
        teeth.add(new Tooth(foot, curvature > 0 ? outward.negate() : outward, Math.abs(curvature)));
    }
}
