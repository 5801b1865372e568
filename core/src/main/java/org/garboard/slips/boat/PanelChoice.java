package org.garboard.slips.boat;

import java.util.Arrays;
import java.util.HashMap;
import java.util.Map;
import org.garboard.slips.fit.Across;
import org.garboard.slips.fit.Fit;
import org.garboard.slips.fit.Foretelling;
import org.garboard.slips.fit.Net;
import org.garboard.slips.fit.Pace;
import org.garboard.slips.fit.Reading;
import org.garboard.slips.fit.Unfairness;

/** Looks for a panel's fairness, the panel with its two lines by itself: a coarse net, then a pattern search. */
final class PanelChoice {
    private static final double LEAST = -2;
    static final double MOST = 8;
    private static final int MOST_LEFT_OUT = 3;
    private static final double NET = 2;
    private static final double[] BOWS = {0, 2, 4};

    private final Net net;
    private final Reading[] readings;
    private final boolean[] out;
    private final double scatter;
    private final double[] lines;
    private final Across across;
    private final int firstColumn;
    private final Map<Unfairness.OfPanel, Double> seen = new HashMap<>();

    PanelChoice(Rows rows, Skin skin, int panel, BoatFairness fairness, Reading[] all, boolean[] out,
                double scatter) {
        this.across = skin.across(panel);
        this.out = out;
        this.scatter = scatter;
        int[] at = new int[skin.net().size() / skin.net().along().functions()];
        Arrays.fill(at, -1);
        int count = 0;
        for (int line = panel; line <= panel + 1; line++) {
            for (int column : new int[] {rows.columnOfY(line), rows.columnOfZ(line)}) {
                if (column >= 0 && at[column] < 0) {
                    at[column] = count++;
                }
            }
        }
        this.firstColumn = count;
        for (int c = 0; c < across.columns(); c++) {
            at[skin.firstColumn(panel) + c] = count++;
        }
        this.net = new Net(rows.along(), count);
        this.lines = net.emptyBand();
        for (int column = 0; column < rows.namedColumns(); column++) {
            if (at[column] >= 0) {
                Unfairness.addRow(net, lines, at[column], fairness.rows().get(column));
            }
        }
        this.readings = new Reading[all.length];
        for (int c = 0; c < all.length; c++) {
            readings[c] = all[c] == null ? null : all[c].over(at);
        }
    }

    Unfairness.OfPanel best() {
        Unfairness.OfPanel best = null;
        for (double along = LEAST; along <= MOST; along += NET) {
            for (double acrossIt = LEAST; acrossIt <= MOST; acrossIt += NET) {
                best = better(best, new Unfairness.OfPanel(along, acrossIt, new Pace(1, 0)));
            }
        }
        for (Unfairness.OfPanel here = null; !best.equals(here); ) {
            here = best;
            for (int i = -1; i <= 1; i++) {
                for (int k = -1; k <= 1; k++) {
                    best = better(best, new Unfairness.OfPanel(here.along() + i, here.across() + k, here.pace()));
                }
            }
            for (double bow : BOWS) {
                best = better(best, new Unfairness.OfPanel(here.along(), here.across(), new Pace(1, bow)));
            }
        }
        return best;
    }

    private Unfairness.OfPanel better(Unfairness.OfPanel one, Unfairness.OfPanel other) {
        boolean inRange = Math.min(other.along(), other.across()) >= LEAST && Math.max(other.along(), other.across()) <= MOST;
        return one == null || inRange && score(other) < score(one) ? other : one;
    }

    double score(Unfairness.OfPanel fairness) {
        return seen.computeIfAbsent(fairness, key -> {
            double[] band = lines.clone();
            Unfairness.addPanel(net, band, firstColumn, across, key);
            return new Foretelling(new Fit(net, readings, out, band, scatter), MOST_LEFT_OUT).score();
        });
    }
}
