package org.garboard.slips.boat;

import org.garboard.slips.fit.Fit;
import org.garboard.slips.fit.Foretelling;
import org.garboard.slips.fit.Net;
import org.garboard.slips.fit.Pace;
import org.garboard.slips.fit.Reading;
import org.garboard.slips.fit.Unfairness;

/**
 * Fits a row of a named line along the boat by itself: as fair as makes its cells foretell each other best.
 */
final class RowChoice {
    /** A cell farther out than this is a suspect before the panels are looked at [standard deviations]. */
    private static final double SUSPECT = 8;
    private static final int MOST_SUSPECTS = 3;
    private static final double[] STATIONS = {0, 0.5, 1};
    private static final double[] BOWS = {0, 2, 4};
    private static final double LEAST = -1;
    static final double MOST = 10;
    private static final double STEP = 0.5;

    private final Net net;
    private final Reading[] readings;
    private final boolean[] out;
    private final double scatter;
    private final Unfairness.OfRow fairness;

    /**
     * @param column of the row among the named rows
     * @param out cells left out
     */
    RowChoice(Rows rows, int column, boolean[] out, double scatter) {
        this.net = new Net(rows.along(), 1);
        this.readings = new Reading[out.length];
        this.out = out.clone();
        this.scatter = scatter;
        for (int c = 0; c < readings.length; c++) {
            Cell cell = rows.cells().get(c);
            if (rows.columnOf(cell) == column) {
                readings[c] = Reading.of(cell.station(), 0, cell.written());
            }
        }
        this.fairness = best();
    }

    private Unfairness.OfRow best() {
        double least = Double.POSITIVE_INFINITY;
        Unfairness.OfRow best = null;
        for (double stations : STATIONS) {
            for (double bow : BOWS) {
                for (double log = LEAST; log <= MOST; log += STEP) {
                    Unfairness.OfRow there = new Unfairness.OfRow(log, new Pace(stations, bow));
                    double score = new Foretelling(fit(there), MOST_SUSPECTS).score();
                    if (score < least) {
                        least = score;
                        best = there;
                    }
                }
            }
        }
        return best;
    }

    private Fit fit(Unfairness.OfRow there) {
        double[] penalty = net.emptyBand();
        Unfairness.addRow(net, penalty, 0, there);
        return new Fit(net, readings, out, penalty, scatter);
    }

    Unfairness.OfRow fairness() {
        return fairness;
    }

    /**
     * The row at the stations [m], its suspects left out.
     *
     * @param suspects set to true where one is
     */
    double[] fair(boolean[] suspects) {
        Fit fit = fit(fairness);
        for (int n = 0; n < MOST_SUSPECTS; n++) {
            int worst = Foretelling.worst(fit, SUSPECT);
            if (worst < 0) {
                break;
            }
            suspects[worst] = true;
            fit.leaveOut(worst);
        }
        double[] values = new double[net.along().stations()];
        for (int j = 0; j < values.length; j++) {
            values[j] = net.value(fit.solution(), j, 0);
        }
        return values;
    }
}
