package org.garboard.slips;

import java.util.Arrays;
import org.garboard.slips.boat.Boat;
import org.garboard.slips.boat.Rows;

/** Leaves cells out, one by one, until those that are in agree with each other and those that are out do not. */
final class Sifting {
    /**
     * Limits of |t|. Measured over 2000 clean tables of boats drawn by lot, the largest |t| of a table was 2.2 inside
     * and 1.8 at the end stations in the median, 3.0 and 3.1 in 99 of 100, 6.7 and 22 at most before the fairness is
     * looked for once more; then none was beyond. A slip of 12 mm stands some 8 to 12 scatters apart inside.
     */
    private static final double INSIDE = 4.5;
    private static final double AT_END = 6;
    private static final int MOST_RETURNS = 2;
    private static final int MOST_ROUNDS = 30;
    /** Median of |t| of normal errors. */
    private static final double NORMAL_MEDIAN = 0.6745;
    /** How much wider than normal the middle of a clean table may be by chance; our choice. */
    private static final double CHANCE = 1.25;

    private final Rows rows;
    private final Boat boat;
    private final int[] returns;
    private double spread = 1;

    Sifting(Rows rows, Boat boat) {
        this.rows = rows;
        this.boat = boat;
        this.returns = new int[rows.cells().size()];
    }

    void sift() {
        boolean fresh = true;
        for (int round = 0; round < MOST_ROUNDS; round++) {
            measureSpread();
            int back = nearestOut();
            int worst = back >= 0 ? -1 : worstIn();
            if (back >= 0) {
                boat.takeBack(back);
                returns[back]++;
            } else if (worst >= 0) {
                boat.leaveOut(worst);
            } else if (fresh) {
                return;
            }
            fresh = back < 0 && worst < 0;
            if (fresh) {
                boat.refit();
            }
        }
    }

    /** A table that is rougher than its rounding spreads all its cells; limits widen with it. */
    private void measureSpread() {
        double[] t = new double[returns.length];
        int count = 0;
        for (int c = 0; c < t.length; c++) {
            if (boat.isSeen(c) && !boat.isOut(c)) {
                t[count++] = Math.abs(boat.apart(c).t());
            }
        }
        Arrays.sort(t, 0, count);
        spread = count == 0 ? 1 : Math.max(1, t[count / 2] / NORMAL_MEDIAN / CHANCE);
    }

    /** How many times beyond its limit a cell stands. */
    private double beyond(int cell) {
        double limit = rows.isAtEnd(rows.cells().get(cell)) ? AT_END : INSIDE;
        return Math.abs(boat.apart(cell).t()) / (limit * spread);
    }

    private int nearestOut() {
        int nearest = -1;
        double least = 1;
        for (int c = 0; c < returns.length; c++) {
            if (boat.isOut(c) && boat.isSeen(c) && returns[c] < MOST_RETURNS && beyond(c) < least) {
                least = beyond(c);
                nearest = c;
            }
        }
        return nearest;
    }

    /** Of those beyond their limits the one without which the others are likeliest. */
    private int worstIn() {
        int worst = -1;
        double most = 0;
        for (int c = 0; c < returns.length; c++) {
            if (!boat.isOut(c) && boat.isSeen(c) && beyond(c) > 1 && Math.abs(boat.apart(c).t()) > most) {
                most = Math.abs(boat.apart(c).t());
                worst = c;
            }
        }
        return worst;
    }
}
