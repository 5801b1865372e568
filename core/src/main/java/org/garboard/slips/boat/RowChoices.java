package org.garboard.slips.boat;

import java.util.ArrayList;
import java.util.List;
import org.garboard.slips.fit.Unfairness;

/** The named rows, each by itself. */
final class RowChoices {
    private final List<Unfairness.OfRow> fairness = new ArrayList<>();
    private final double[][] fair;
    private final boolean[] suspects;

    /** @param out cells left out */
    RowChoices(Rows rows, boolean[] out, double scatter) {
        fair = new double[rows.namedColumns()][];
        suspects = out.clone();
        for (int column = 0; column < fair.length; column++) {
            RowChoice choice = new RowChoice(rows, column, out, scatter);
            fairness.add(choice.fairness());
            fair[column] = choice.fair(suspects);
        }
    }

    /** By column. */
    List<Unfairness.OfRow> fairness() {
        return fairness;
    }

    /** By column and station [m]. */
    double[][] fair() {
        return fair;
    }

    /** Cells left out and those that disagree with their own row. */
    boolean[] suspects() {
        return suspects.clone();
    }
}
