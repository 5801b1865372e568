package org.garboard.hydrostatics;

import org.garboard.geometry.GaussRule;
import org.garboard.geometry.KnotVector;
import org.garboard.hull.Panel;
import org.garboard.hull.PlanFace;
import org.garboard.hull.StemFace;
import org.garboard.hull.Step;
import org.garboard.hull.TransomFace;

/** Wet areas of the faces at the ends of a hull's lengths [m2], both sides. */
final class WetFaces {
    private static final GaussRule RULE = GaussRule.of(8);
    private static final int SPANS = 16;
    private static final int HALVINGS = 50;

    private final WaterSurface water;

    WetFaces(WaterSurface water) {
        this.water = water;
    }

    /** Of a function of one variable that is nothing where the face is dry. */
    private interface Strip {
        double at(double t);
    }

    /** A step's face, the sides of its notches included. */
    double of(Step step) {
        PlanFace face = step.face();
        double area = 0;
        double from = 0;
        for (int i = 0; i <= face.size(); i++) {
            double to = i == face.size() ? step.outer() : Math.min(step.outer(), face.pointY(i));
            if (i > 0 && i < face.size() && face.pointY(i) == face.pointY(i - 1) && face.pointY(i) <= step.outer()) {
                double y = face.pointY(i);
                area += sum(x -> wet(step.lower(x, y), step.upper(x, y), x), Math.min(face.pointX(i), face.pointX(i - 1)),
                    Math.max(face.pointX(i), face.pointX(i - 1)));
            } else if (to > from) {
                double run = i == 0 || i == face.size() ? 0
                    : (face.pointX(i) - face.pointX(i - 1)) / (face.pointY(i) - face.pointY(i - 1));
                double last = to;
                area += Math.hypot(1, run) * sum(y -> wet(step.lower(step.x(y), y), step.upper(step.x(y), y), step.x(y)), from, last);
            }
            from = Math.max(from, to);
        }
        return 2 * area;
    }

    private double wet(double lower, double upper, double x) {
        double level = water.at(x);
        double height = Math.min(upper, level) - Math.min(lower, level);
        return height == height ? height : 0;
    }

    /** Halved where the two halves do not agree with the whole, as at the water's edge. */
    private static double sum(Strip strip, double from, double to) {
        double total = 0;
        for (int i = 0; i < SPANS; i++) {
            double a = from + (to - from) * i / SPANS;
            double b = from + (to - from) * (i + 1) / SPANS;
            total += refined(strip, a, b, gauss(strip, a, b), HALVINGS);
        }
        return total;
    }

    private static double refined(Strip strip, double from, double to, double whole, int halvings) {
        double middle = 0.5 * (from + to);
        double one = gauss(strip, from, middle);
        double other = gauss(strip, middle, to);
        if (halvings == 0 || Math.abs(one + other - whole) < 1e-12) {
            return one + other;
        }
        return refined(strip, from, middle, one, halvings - 1) + refined(strip, middle, to, other, halvings - 1);
    }

    private static double gauss(Strip strip, double from, double to) {
        double sum = 0;
        for (int i = 0; i < RULE.size(); i++) {
            sum += (to - from) * RULE.weight(i) * strip.at(from + (to - from) * RULE.at(i));
        }
        return sum;
    }

    /** What one panel's edge on a stem adds: the stem's face between it and the centreline, at the slant of its profile. */
    double of(Panel panel, StemFace face) {
        KnotVector across = panel.knotsAcross();
        double[] at = new double[Panel.DERIVATIVES];
        Strip width = v -> {
            double x = panel.from(v);
            panel.differentiate(x, v, at, 0);
            double up = face.slopeUp(at[1]);
            return at[1] < water.at(x) ? at[0] * Math.hypot(1, up) * (at[5] + at[3] * up * at[5] / (1 - up * at[3])) : 0;
        };
        double area = 0;
        for (int cell = 0; cell < across.cells(); cell++) {
            area += sum(width, across.cellStart(cell), across.cellStart(cell + 1));
        }
        return 2 * area;
    }

    /**
     * What one panel's edge on a transom adds: the face between it and the centreline, which is the integral of the
     * width across the face, at the slant it has there, over the height of the edge.
     */
    double of(Panel panel, TransomFace face) {
        KnotVector across = panel.knotsAcross();
        double[] at = new double[Panel.DERIVATIVES];
        Strip width = v -> {
            double x = panel.to(v);
            panel.differentiate(x, v, at, 0);
            if (at[1] >= water.at(x)) {
                return 0;
            }
            double out = face.slopeOut(at[0]);
            double up = face.slopeUp(at[1]);
            double along = (out * at[4] + up * at[5]) / (1 - out * at[2] - up * at[3]);
            double slant = up;
            double halfWidth = at[0];
            double square = gauss(y -> Math.sqrt(1 + face.slopeOut(y) * face.slopeOut(y) + slant * slant), 0, halfWidth);
            return square * (at[5] + at[3] * along);
        };
        double area = 0;
        for (int cell = 0; cell < across.cells(); cell++) {
            area += sum(width, across.cellStart(cell), across.cellStart(cell + 1));
        }
        return 2 * area;
    }
}
