package org.garboard.slips.fit;

/**
 * How well every cell is foretold by the others: minus twice the logarithm of the likelihood of each given the
 * rest (Geisser's predictive sample reuse, 1975; Rasmussen and Williams, <i>Gaussian Processes for Machine
 * Learning</i>, 2006, section 5.4.2; both from memory), robust against slips: each cell may be one, with a
 * small chance and any size, and the worst are left out at that price.
 */
public final class Foretelling {
    /** Share of cells that may be slips, and how far they may lie [m]; our choice, neither matters much. */
    private static final double SLIPS = 0.03;
    private static final double REACH = 2;
    /** A cell farther out than this is tried without [standard deviations]; our choice. */
    private static final double FAR = 4;

    private final double score;

    /**
     * @param fit whose worst cells are left out
     * @param most that are left out
     */
    public Foretelling(Fit fit, int most) {
        double price = 0;
        for (int slips = 0; slips < most; slips++) {
            int worst = worst(fit, FAR);
            if (worst < 0) {
                break;
            }
            fit.leaveOut(worst);
            price -= 2 * Math.log(SLIPS / REACH);
        }
        score = price + ofThoseIn(fit);
    }

    /** Lower is better. */
    public double score() {
        return score;
    }

    /** The cell that is in and stands farthest apart; -1 if none is beyond the limit. */
    public static int worst(Fit fit, double limit) {
        int worst = -1;
        double most = limit;
        for (int c = 0; c < fit.cells(); c++) {
            if (fit.isIn(c)) {
                double t = Math.abs(fit.apart(c).t());
                if (t > most) {
                    most = t;
                    worst = c;
                }
            }
        }
        return worst;
    }

    /** The same without leaving any out. */
    public static double ofThoseIn(Fit fit) {
        double sum = 0;
        for (int c = 0; c < fit.cells(); c++) {
            if (fit.isIn(c)) {
                Apart apart = fit.apart(c);
                double sound = Math.exp(-0.5 * apart.t() * apart.t()) / (Math.sqrt(2 * Math.PI) * apart.scatter());
                sum -= 2 * Math.log((1 - SLIPS) * sound + SLIPS / REACH);
            }
        }
        return sum;
    }
}
