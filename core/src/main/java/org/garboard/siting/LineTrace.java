package org.garboard.siting;

import java.util.function.DoubleUnaryOperator;

/**
 * A named line of the hull as a chain of straights, short enough to stand for the line, and distances
 * from it. Starboard, hull frame [m].
 *
 * <p>With straights 10 mm long in x the chain lies within 13 µm of a line that runs fore and aft and curves at
 * 1 m radius.
 */
final class LineTrace {
    private static final double STEP = 0.010;
    /** Steps towards the foot of the perpendicular; the line is close to straight, two are the rule. */
    private static final int TURNS = 6;
    /** Rounding allowed at the ends, in straights. */
    private static final double BEYOND = 1e-6;

    private final double start;
    private final double step;
    private final double perStep;
    private final double[] y;
    private final double[] z;
    private final double[] dy;
    private final double[] dz;
    private final double[] perSquare;

    LineTrace(DoubleUnaryOperator halfBreadth, DoubleUnaryOperator height, double forwardEnd, double afterEnd) {
        int straights = Math.max(1, (int) Math.ceil((afterEnd - forwardEnd) / STEP));
        this.start = forwardEnd;
        this.step = (afterEnd - forwardEnd) / straights;
        this.perStep = 1 / step;
        this.y = new double[straights + 1];
        this.z = new double[straights + 1];
        for (int i = 0; i <= straights; i++) {
            double x = i == straights ? afterEnd : forwardEnd + i * step;
            y[i] = halfBreadth.applyAsDouble(x);
            z[i] = height.applyAsDouble(x);
        }
        this.dy = new double[straights];
        this.dz = new double[straights];
        this.perSquare = new double[straights];
        for (int i = 0; i < straights; i++) {
            dy[i] = y[i + 1] - y[i];
            dz[i] = z[i + 1] - z[i];
            perSquare[i] = 1 / (step * step + dy[i] * dy[i] + dz[i] * dz[i]);
        }
    }

    /** Half-breadth at x [m], NaN beyond the ends. */
    double y(double x) {
        double place = (x - start) * perStep;
        if (!(place >= -BEYOND && place <= dy.length + BEYOND)) {
            return Double.NaN;
        }
        int i = straightAt(x);
        return y[i] + (place - i) * dy[i];
    }

    /** The greatest half-breadth of the line [m]. */
    double largestY() {
        double largest = 0;
        for (double halfBreadth : y) {
            largest = Math.max(largest, halfBreadth);
        }
        return largest;
    }

    /** Distance of a point from the line, straight through space [m]. */
    double distance(double px, double py, double pz) {
        int i = straightAt(px);
        double t = footOn(i, px, py, pz);
        for (int turn = 0; turn < TURNS && (t < 0 || t > 1); turn++) {
            int next = Math.max(0, Math.min(dy.length - 1, i + (int) Math.floor(t)));
            if (next == i) {
                break;
            }
            i = next;
            t = footOn(i, px, py, pz);
        }
        double nearest = fromStraight(i, t, px, py, pz);
        if (t < 0 && i > 0) {
            nearest = Math.min(nearest, fromStraight(i - 1, footOn(i - 1, px, py, pz), px, py, pz));
        } else if (t > 1 && i + 1 < dy.length) {
            nearest = Math.min(nearest, fromStraight(i + 1, footOn(i + 1, px, py, pz), px, py, pz));
        }
        return Math.sqrt(nearest);
    }

    private int straightAt(double x) {
        return Math.max(0, Math.min(dy.length - 1, (int) ((x - start) * perStep)));
    }

    /** Where the perpendicular meets a straight: 0 at its forward end, 1 at its after end. */
    private double footOn(int i, double px, double py, double pz) {
        return ((px - start - i * step) * step + (py - y[i]) * dy[i] + (pz - z[i]) * dz[i]) * perSquare[i];
    }

    /** Square of the distance from a straight, given the foot on its endless line. */
    private double fromStraight(int i, double foot, double px, double py, double pz) {
        double t = foot < 0 ? 0 : foot > 1 ? 1 : foot;
        double ex = px - start - (i + t) * step;
        double ey = py - y[i] - t * dy[i];
        double ez = pz - z[i] - t * dz[i];
        return ex * ex + ey * ey + ez * ez;
    }
}
