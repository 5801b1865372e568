package org.garboard.drawing.lines;

import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.appendage.Keel;
import org.garboard.hull.Curve;
import org.garboard.hull.Hull;
import org.garboard.hull.HullCurves;

/**
 * How far a hull reaches, as its sections show it.
 *
 * @param lowest height above base [m]
 * @param highest height above base [m]
 * @param halfBeam largest half-breadth [m]
 */
record HullExtent(double lowest, double highest, double halfBeam) {
    /** Sections looked at: our choice, a paper's width in steps of some millimetres. */
    private static final int LOOKS = 100;
    private static final double CHORD = 2e-3;

    /** @param keel below its skin */
    static HullExtent of(Hull hull, Optional<Keel> keel) {
        double lowest = keel.map(below -> below.lowest().z()).orElse(Double.POSITIVE_INFINITY);
        double highest = Double.NEGATIVE_INFINITY;
        double halfBeam = 0;
        for (int i = 0; i <= LOOKS; i++) {
            double share = (double) i / LOOKS;
            double x = hull.forwardEnd() * (1 - share) + hull.afterEnd() * share;
            for (Curve curve : new HullCurves(hull).section(x, CHORD)) {
                for (Vector3D point : curve.points()) {
                    lowest = Math.min(lowest, point.getZ());
                    highest = Math.max(highest, point.getZ());
                    halfBeam = Math.max(halfBeam, point.getY());
                }
            }
        }
        return new HullExtent(lowest, highest, halfBeam);
    }
}
