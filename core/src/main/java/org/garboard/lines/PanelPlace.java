package org.garboard.lines;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.geometry.KnotVector;
import org.garboard.hull.Panel;

/** Where a point lies on a panel. */
final class PanelPlace {
    private static final int LOOKS_PER_CELL = 4;
    private static final int MOST_STEPS = 30;

    private PanelPlace() {
    }

    /** v across of the panel's nearest place in the section of a point; Newton's method from the nearest of many looks. */
    static double across(Panel panel, Vector3D point) {
        double[] at = new double[Panel.DERIVATIVES];
        KnotVector across = panel.knotsAcross();
        double v = 0;
        double nearest = Double.POSITIVE_INFINITY;
        for (int cell = 0; cell < across.cells(); cell++) {
            double width = across.cellStart(cell + 1) - across.cellStart(cell);
            for (int look = 0; look <= LOOKS_PER_CELL; look++) {
                double tried = across.cellStart(cell) + width * look / LOOKS_PER_CELL;
                panel.differentiate(point.getX(), tried, at, 0);
                double distance = Math.hypot(at[0] - point.getY(), at[1] - point.getZ());
                if (distance < nearest) {
                    nearest = distance;
                    v = tried;
                }
            }
        }
        for (int step = 0; step < MOST_STEPS; step++) {
            panel.differentiate(point.getX(), v, at, 0);
            double speed = at[4] * at[4] + at[5] * at[5];
            double move = speed > 0
                ? ((point.getY() - at[0]) * at[4] + (point.getZ() - at[1]) * at[5]) / speed : 0;
            v = Math.min(across.end(), Math.max(across.start(), v + move));
            if (Math.abs(move) < 1e-12) {
                break;
            }
        }
        return v;
    }
}
