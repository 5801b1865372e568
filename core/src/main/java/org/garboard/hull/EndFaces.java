package org.garboard.hull;

import org.garboard.geometry.CubicSpline;
import org.garboard.offsets.EndPoint;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.StemLine;
import org.garboard.offsets.StepLine;
import org.garboard.offsets.TransomLine;
import org.garboard.units.FixedDecimal;

/** Faces from what a table says of them, put onto the lines that the length before them draws. */
final class EndFaces {

    private static final int STEM_LOOKS = 400;

    private EndFaces() {
    }

    static PlanFace step(StepLine line, LengthLoft forward) {
        int count = line.points().size();
        double[] y = new double[count];
        double[] x = new double[count];
        for (int i = 0; i < count; i++) {
            EndPoint point = line.points().get(i);
            x[i] = point.x();
            y[i] = point.kind() == LineKind.BUTTOCK ? point.level() : forward.line(point.line()).y(point.x());
            if (i > 0 && y[i] < y[i - 1]) {
                throw HullNotDrawn.end(point.line() + " at x = " + FixedDecimal.format(x[i], 3) + " m, where a step's line crosses"
                    + " it, lies inboard of " + line.points().get(i - 1).line() + ", which the step's line crosses before;"
                    + " leave one of the two out");
            }
        }
        return new PlanFace(y, x);
    }

    /** Its profile goes through the ends as the lines are drawn on to them. */
    static StemFace stem(StemLine outline, LengthLoft after) {
        int count = outline.points().size();
        double[] x = new double[count];
        double[] z = new double[count];
        for (int i = 0; i < count; i++) {
            EndPoint point = outline.points().get(i);
            x[i] = point.x();
            z[i] = point.kind() == LineKind.WATERLINE ? point.level() : after.line(point.line()).z(x[i]);
            if (i > 0 && !(z[i] > z[i - 1])) {
                throw HullNotDrawn.end(point.line() + " at x = " + FixedDecimal.format(x[i], 3) + " m, where it ends on the stem, "
                    + FixedDecimal.format(z[i], 3) + " m above base, is no higher than " + outline.points().get(i - 1).line()
                    + " where that ends, " + FixedDecimal.format(z[i - 1], 3) + " m; leave one of the two out");
            }
        }
        CubicSpline profile = CubicSpline.through(z, x);
        for (int i = 0; i <= STEM_LOOKS; i++) {
            double height = z[0] + (z[count - 1] - z[0]) * i / STEM_LOOKS;
            if (!(profile.value(height) < after.start())) {
                throw HullNotDrawn.end("the stem drawn through its ends comes back to the first station, x = "
                    + FixedDecimal.format(after.start(), 3) + " m, at " + FixedDecimal.format(height, 3)
                    + " m above base; compare the ends, or give more of them there");
            }
        }
        return new StemFace(profile, outline.halfSiding(), after.start());
    }

    /** The given round is reached at the widest of the ends. */
    static TransomFace transom(TransomLine outline, LengthLoft forward) {
        int count = outline.points().size();
        double[] x = new double[count];
        double[] z = new double[count];
        double[] y = new double[count];
        double widest = 0;
        for (HullLine line : forward.lines()) {
            widest = Math.max(widest, line.y(forward.end()));
        }
        for (int i = 0; i < count; i++) {
            EndPoint point = outline.points().get(i);
            x[i] = point.x();
            if (point.kind() == LineKind.WATERLINE) {
                z[i] = point.level();
            } else {
                y[i] = forward.line(point.line()).y(x[i]);
                z[i] = forward.line(point.line()).z(x[i]);
            }
            if (i > 0 && !(z[i] > z[i - 1])) {
                throw HullNotDrawn.end(point.line() + " at x = " + FixedDecimal.format(x[i], 3) + " m, where the transom ends it,"
                    + " is no higher than " + outline.points().get(i - 1).line() + " where that ends; leave one of the two out");
            }
        }
        double perSquare = outline.round() / (widest * widest);
        for (int i = 0; i < count; i++) {
            x[i] += perSquare * y[i] * y[i];
        }
        return new TransomFace(CubicSpline.through(z, x), perSquare, widest);
    }
}
