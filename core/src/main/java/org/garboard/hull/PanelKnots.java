package org.garboard.hull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.garboard.geometry.KnotVector;

/**
 * Where a panel's points lie across it, and the knots that let its sections pass through them.
 *
 * <p>Across the panel the parameter v runs from 0 at the lower line to 1 at the upper, at each
 * station by chord length.
 */
final class PanelKnots {

    private PanelKnots() {
    }

    /** Chord-length parameters of a section's points, 0 at the first, 1 at the last. */
    static double[] chordLength(double[] y, double[] z) {
        double[] v = new double[y.length];
        for (int i = 1; i < y.length; i++) {
            v[i] = v[i - 1] + Math.hypot(y[i] - y[i - 1], z[i] - z[i - 1]);
        }
        double girth = v[y.length - 1];
        for (int i = 1; i < y.length; i++) {
            v[i] = girth > 0 ? v[i] / girth : (double) i / (y.length - 1);
        }
        return v;
    }

    /**
     * As few knots as leave one between any two neighbouring points of every station, which is
     * enough for a spline through all of them to exist (Schoenberg and Whitney 1953, from memory).
     */
    static KnotVector across(List<double[]> stations) {
        List<double[]> gaps = new ArrayList<>();
        for (double[] v : stations) {
            for (int i = 1; i < v.length; i++) {
                gaps.add(new double[] {v[i - 1], v[i]});
            }
        }
        gaps.sort(Comparator.<double[]>comparingDouble(gap -> gap[1]).thenComparingDouble(gap -> gap[0]));
        double[] knots = new double[gaps.size()];
        int count = 0;
        double from = gaps.get(0)[0];
        double to = gaps.get(0)[1];
        for (double[] gap : gaps) {
            double narrowed = Math.max(from, gap[0]);
            boolean roomLeft = narrowed < to - 0.25 * Math.min(to - from, gap[1] - gap[0]);
            if (gap[0] < to && roomLeft) {
                from = narrowed;
            } else {
                knots[count++] = 0.5 * (from + to);
                from = gap[0];
                to = gap[1];
            }
        }
        knots[count++] = 0.5 * (from + to);
        return KnotVector.clamped(0, 1, Arrays.copyOf(knots, count));
    }
}
