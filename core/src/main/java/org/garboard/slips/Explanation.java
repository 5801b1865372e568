package org.garboard.slips;

import java.util.Optional;
import org.garboard.offsets.Measure;
import org.garboard.slips.boat.Cell;
import org.garboard.slips.fit.Apart;
import org.garboard.slips.pen.Pen;
import org.garboard.slips.pen.SlipKind;
import org.garboard.slips.pen.Undone;

/**
 * The slip that best explains a cell.
 *
 * @param undone the value that was spoilt
 * @param cost minus twice the logarithm of its likelihood, up to a constant shared by all explanations
 * @param lead by how much the next best costs more
 */
record Explanation(Undone undone, double cost, double lead) {
    /** How far from foretold an undone value may be [standard deviations]; clean tables stay within. */
    private static final double NEAR = 4;
    /** So far if that is this small a share of how far the written value is: the ends are foretold too boldly. */
    private static final double FAIRLY_NEAR = 8;
    private static final double SMALL = 0.02;
    /** A cell is a slip this seldom, and one of so many that could be; our choice, neither matters much. */
    private static final double PRIOR = 2 * Math.log(2000);
    /** Eighths are seven kinds of slip, digits and points several: each is so much less likely; our choice. */
    private static final double ONE_OF_SEVERAL = 2;
    private static final double ONE_OF_SEVEN = 4;
    /** What a cell costs that is out and that no slip explains. */
    static final double NONE = 2 * Math.log(10_000);

    /** What explains a cell that the others foretell to be elsewhere; none if no slip does. */
    static Optional<Explanation> of(Cell cell, Measure measure, Apart apart, Pen pen) {
        double foretold = cell.written() - apart.metres();
        Undone best = null;
        double least = Double.POSITIVE_INFINITY;
        double next = Double.POSITIVE_INFINITY;
        for (Undone undone : pen.undone(cell.written())) {
            double t = (undone.value() - foretold) / apart.scatter();
            boolean near = Math.abs(t) <= NEAR || Math.abs(t) <= Math.min(FAIRLY_NEAR, SMALL * Math.abs(apart.t()));
            if (!near || measure == Measure.HALF_BREADTH && undone.value() < 0) {
                continue;
            }
            double cost = t * t + several(undone.kind()) + 2 * Math.log(Math.sqrt(2 * Math.PI) * apart.scatter()) + PRIOR;
            if (cost < least) {
                next = least;
                least = cost;
                best = undone;
            } else {
                next = Math.min(next, cost);
            }
        }
        return Optional.ofNullable(best == null ? null : new Explanation(best, least, next - least));
    }

    private static double several(SlipKind kind) {
        return switch (kind) {
            case FOOT, INCH -> 0;
            case SWAPPED_DIGITS, MOVED_POINT -> ONE_OF_SEVERAL;
            case EIGHTHS -> ONE_OF_SEVEN;
        };
    }
}
