package org.garboard.flow.attitude;

import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.offsets.LineKind;

/** The V of a bottom, from what stands for its keel out to its edge: beside a box keel it begins at the keel's top. */
final class VBottom {
    private final HullLine inner;
    private final HullLine edge;
    private final boolean box;

    VBottom(Hull hull) {
        this.inner = hull.lines().stream().filter(line -> line.kind() == LineKind.KEEL_TOP).findFirst().orElse(hull.keel());
        this.box = inner != hull.keel();
        this.edge = hull.bottomEdge();
    }

    double beam(double x) {
        return 2 * edge.y(x);
    }

    /** Of the chord [rad]. */
    double deadrise(double x) {
        return Math.atan2(edge.z(x) - inner.z(x), edge.y(x) - inside(x));
    }

    /** Height of the chord where it is drawn on to the centreline [m]; of a box keel that lies inside it. */
    double keel(double x) {
        return box ? inner.z(x) - inside(x) * Math.tan(deadrise(x)) : inner.z(x);
    }

    /** Angle of the keel's chord to the base line, positive where it rises forward [rad]. */
    double rise(double end, double length) {
        return Math.atan2(keel(end - length) - keel(end), length);
    }

    private double inside(double x) {
        return box ? inner.y(x) : 0;
    }
}
