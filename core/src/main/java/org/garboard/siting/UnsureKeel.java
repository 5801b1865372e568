package org.garboard.siting;

import java.util.List;
import org.garboard.hull.Hull;
import org.garboard.hull.HullLine;
import org.garboard.hull.UnsureStretch;
import org.garboard.offsets.LineKind;

/** Where a keel is drawn that is not to be relied on: no place may lie on it there. Owns its arrays. */
final class UnsureKeel {
    private final double[] from;
    private final double[] to;
    private final HullLine foot;
    private final HullLine edge;

    private UnsureKeel(List<UnsureStretch> stretches, HullLine foot, HullLine edge) {
        this.from = stretches.stream().mapToDouble(UnsureStretch::from).toArray();
        this.to = stretches.stream().mapToDouble(UnsureStretch::to).toArray();
        this.foot = foot;
        this.edge = edge;
    }

    static UnsureKeel of(Hull hull) {
        HullLine foot = hull.lines().get(1);
        return new UnsureKeel(UnsureStretch.of(hull), foot,
            hull.lines().stream().filter(line -> line.kind() == LineKind.KEEL_TOP).findFirst().orElse(foot));
    }

    /** Half-breadth at x up to which nothing is to be relied on [m]; negative where all is sure. Allocates nothing. */
    double halfBreadth(double x) {
        for (int i = 0; i < from.length; i++) {
            if (x >= from[i] && x <= to[i]) {
                return Math.max(0, Math.max(foot.y(x), edge.y(x)));
            }
        }
        return -1;
    }
}
