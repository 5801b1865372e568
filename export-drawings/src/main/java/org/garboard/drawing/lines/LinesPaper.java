package org.garboard.drawing.lines;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.appendage.Keel;
import org.garboard.drawing.Point;
import org.garboard.drawing.Scale;
import org.garboard.drawing.layout.Lettering;
import org.garboard.drawing.sheets.Figures;
import org.garboard.drawing.sheets.HullOnPaper;
import org.garboard.hull.Curve;
import org.garboard.hull.Hull;
import org.garboard.hull.HullCurves;
import org.garboard.hull.HullLine;

/**
 * The hull of a lines drawing at one scale, and what its views have in common.
 *
 * <p>Places on paper are those of {@link HullOnPaper}; the half-breadth plan is seen from above, starboard down.
 */
record LinesPaper(Hull hull, Optional<Keel> keel, HullExtent extent, LinesGrid grid, HullOnPaper paper, Scale scale, Lettering lettering,
                  Figures figures) {

    double letter() {
        return lettering.figures();
    }

    double length() {
        return paper.length();
    }

    /** Seen from above: starboard down, and to port, up, for negative y. */
    Point plan(double x, double y) {
        return new Point(paper.lengthwise(x), -scale.paper(y));
    }

    /** The aftermost point of curves that run forward to aft; empty when there is none. */
    static Optional<Vector3D> afterEnd(List<Curve> curves) {
        Vector3D last = null;
        for (Curve curve : curves) {
            for (Vector3D point : curve.points()) {
                if (last == null || point.getX() > last.getX()) {
                    last = point;
                }
            }
        }
        return Optional.ofNullable(last);
    }

    List<Curve> curves(HullLine line) {
        return new HullCurves(hull).line(line, paper.chord());
    }
}
