package org.garboard.hull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import org.garboard.geometry.KnotVector;

/** The knots across a panel that let its sections pass through all their points. */
final class PanelKnots {

    /**
     * Points nearer than this share of a strip need no knot between them, only one near: third derivatives
     * grow with the fifth power of the knots' nearness and would drown the readings that a fair strip weighs
     * against them. Our choice: a centimetre in a metre.
     */
    static final double GAP_TO_FAIR = 0.01;
    /** The same for a strip that passes through its points whatever their third derivatives. */
    static final double GAP_TO_PASS = 0.001;

    private PanelKnots() {
    }

    /**
     * As few knots as leave one between any two neighbouring points of every station, the two lines
     * included, which is enough for a spline through all of them to exist (Schoenberg and Whitney 1953,
     * from memory).
     *
     * @param leastGap of neighbours that a knot parts, as a share of the strip
     */
    static KnotVector across(Strip strip, double leastGap) {
        List<double[]> gaps = new ArrayList<>();
        for (int j = 0; j < strip.stations(); j++) {
            double before = 0;
            for (double v : strip.v(j)) {
                before = addGap(gaps, before, v, leastGap);
            }
            addGap(gaps, before, 1, leastGap);
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

    /** Fairing moves the lines, by which neighbours that all but touch may change places: no knot parts them. */
    private static double addGap(List<double[]> gaps, double before, double v, double leastGap) {
        if (v > before) {
            double lack = Math.max(0, leastGap - (v - before)) / 2;
            gaps.add(new double[] {Math.max(0, before - lack), Math.min(1, v + lack)});
        }
        return Math.max(before, v);
    }
}
