package org.garboard.flow.attitude;

import org.garboard.flow.planing.Prism;
import org.garboard.hull.Hull;
import org.garboard.units.Angle;

/** The prism with a bottom's mean beam and mean chord deadrise over a length forward of where the bottom ends. */
final class MeanPrism {
    private static final int LOOKS = 50;

    private final Hull hull;
    private final double end;

    MeanPrism(Hull hull, double end) {
        this.hull = hull;
        this.end = end;
    }

    Prism over(double length) {
        double beam = 0;
        double deadrise = 0;
        for (int i = 0; i < LOOKS; i++) {
            double x = end - length * (i + 0.5) / LOOKS;
            double y = hull.bottomEdge().y(x);
            beam += 2 * y / LOOKS;
            deadrise += Math.atan2(hull.bottomEdge().z(x) - hull.keel().z(x), y) / LOOKS;
        }
        return new Prism(beam, Angle.ofRadians(Math.max(0, deadrise)));
    }

    /** Angle of the keel's chord to the base line, positive where it rises forward [rad]. */
    double rise(double length) {
        return Math.atan2(hull.keel().z(end - length) - hull.keel().z(end), length);
    }
}
