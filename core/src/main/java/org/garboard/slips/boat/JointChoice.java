package org.garboard.slips.boat;

import java.util.Collection;
import org.garboard.slips.fit.Fit;
import org.garboard.slips.fit.Foretelling;
import org.garboard.slips.fit.Reading;
import org.garboard.slips.fit.Unfairness;

/**
 * Looks once more for the fairness of some rows and panels, with the whole boat and all its cells: what looks
 * like a slip to a row by itself may be the boat's shape.
 */
final class JointChoice {
    private static final int MOST_ROUNDS = 4;
    private static final int MOST_LEFT_OUT = 8;
    /** A change must be better by more than this, or the search wanders. */
    private static final double BETTER = 0.5;
    private static final double[] ROW_STEPS = {-1, 1};
    private static final double[][] PANEL_STEPS = {{-2, 0}, {2, 0}, {0, -1}, {0, 1}};

    private final Skin skin;
    private final BoatFairness fairness;
    private final Reading[] readings;
    private final double scatter;
    private double best;

    JointChoice(Skin skin, BoatFairness fairness, Reading[] readings, double scatter) {
        this.skin = skin;
        this.fairness = fairness;
        this.readings = readings;
        this.scatter = scatter;
        this.best = score();
    }

    /**
     * @param columns of the rows that may change
     * @param panels that may
     */
    void choose(Collection<Integer> columns, Collection<Integer> panels) {
        double before = Double.POSITIVE_INFINITY;
        for (int round = 0; round < MOST_ROUNDS && best < before; round++) {
            before = best;
            columns.forEach(this::changeRow);
            panels.forEach(this::changePanel);
        }
    }

    private void changeRow(int column) {
        for (double step : ROW_STEPS) {
            Unfairness.OfRow kept = fairness.rows().get(column);
            fairness.setRow(column, new Unfairness.OfRow(kept.log() + step, kept.pace()));
            if (kept.log() + step > RowChoice.MOST || !isBetter()) {
                fairness.setRow(column, kept);
            }
        }
    }

    private void changePanel(int panel) {
        for (double[] step : PANEL_STEPS) {
            Unfairness.OfPanel kept = fairness.panel(panel);
            Unfairness.OfPanel other = new Unfairness.OfPanel(kept.along() + step[0], kept.across() + step[1], kept.pace());
            fairness.setPanel(panel, other);
            if (Math.max(other.along(), other.across()) > PanelChoice.MOST || !isBetter()) {
                fairness.setPanel(panel, kept);
            }
        }
    }

    private boolean isBetter() {
        double score = score();
        boolean better = score < best - BETTER;
        best = better ? score : best;
        return better;
    }

    private double score() {
        Fit fit = new Fit(skin.net(), readings, new boolean[readings.length], fairness.penalty(skin), scatter);
        return new Foretelling(fit, MOST_LEFT_OUT).score();
    }
}
