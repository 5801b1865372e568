package org.garboard.slips.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;

class FitTest {
    private static final double SCATTER = 0.001;

    private final Net net = new Net(new Along(new double[] {0, 1, 2.5, 3, 4, 5, 6.5, 7, 8}), 2);

    private Reading[] readings() {
        Random lot = new Random(5);
        Reading[] readings = new Reading[30];
        for (int c = 0; c < readings.length; c++) {
            int station = lot.nextInt(9);
            readings[c] = new Reading(station, new int[] {0, 1}, new double[] {lot.nextDouble(), lot.nextDouble()},
                lot.nextDouble(), 1 + lot.nextDouble());
        }
        return readings;
    }

    private double[] penalty() {
        double[] band = net.emptyBand();
        Unfairness.addRow(net, band, 0, new Unfairness.OfRow(3, new Pace(1, 2)));
        Unfairness.addRow(net, band, 1, new Unfairness.OfRow(2, Pace.EVEN));
        return band;
    }

    private Fit without(int... out) {
        boolean[] left = new boolean[30];
        for (int cell : out) {
            left[cell] = true;
        }
        return new Fit(net, readings(), left, penalty(), SCATTER);
    }

    private static void assertSame(Apart expected, Apart actual) {
        assertEquals(expected.metres(), actual.metres(), 1e-9 * (1 + Math.abs(expected.metres())));
        assertEquals(expected.scatter(), actual.scatter(), 1e-9 * expected.scatter());
    }

    /** What all others say of a reading that is in is what a fit without it says. */
    @Test
    void law_leavingOneOut() {
        Fit all = without();
        for (int c = 0; c < all.cells(); c++) {
            assertSame(without(c).apart(c), all.apart(c));
        }
    }

    @Test
    void law_readingsLeftOutOneByOneAreAsIfNeverIn() {
        Fit fit = without(2);
        fit.leaveOut(11);
        fit.leaveOut(7);
        fit.takeBack(11);
        fit.takeBack(2);
        fit.leaveOut(20);
        Fit fresh = without(7, 20);
        for (int c = 0; c < fit.cells(); c++) {
            assertEquals(fresh.isIn(c), fit.isIn(c));
            assertSame(fresh.apart(c), fit.apart(c));
        }
        Reading other = Reading.of(4, 1, 0.3);
        assertSame(fresh.apart(other), fit.apart(other));
        for (int i = 0; i < net.size(); i++) {
            assertEquals(fresh.solution()[i], fit.solution()[i], 1e-8);
        }
    }

    /** The square of a cubic's third derivative, integrated; at full pace over stations it does not know their gaps. */
    @Test
    void exact_unfairnessOfACubic() {
        double[] x = {0, 1, 2, 3, 4, 5, 6};
        double[] wide = {0, 2, 4, 6, 8, 10, 12};
        for (double[] stations : new double[][] {x, wide}) {
            Net row = new Net(new Along(stations), 1);
            Reading[] readings = new Reading[7];
            for (int j = 0; j < 7; j++) {
                readings[j] = Reading.of(j, 0, 0.1 * j * j * j);
            }
            Fit through = new Fit(row, readings, new boolean[7], penaltyOf(row, -9), 1e-6);
            double[][] gram = row.along().gram(3, new Pace(1, 0));
            double sum = 0;
            for (int i = 0; i < gram.length; i++) {
                for (int k = 0; k < gram.length; k++) {
                    sum += through.solution()[i] * gram[i][k] * through.solution()[k];
                }
            }
            assertEquals(6 * 0.36, sum, 1e-6);
        }
    }

    private static double[] penaltyOf(Net row, double log) {
        double[] band = row.emptyBand();
        Unfairness.addRow(row, band, 0, new Unfairness.OfRow(log, Pace.EVEN));
        return band;
    }
}
