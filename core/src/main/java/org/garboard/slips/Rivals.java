package org.garboard.slips;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.garboard.slips.boat.Boat;
import org.garboard.slips.boat.Cell;
import org.garboard.slips.boat.Rows;
import org.garboard.slips.pen.Pen;

/** Asks of every accused cell whether a slip in another one would explain the table better, or as well. */
final class Rivals {
    /** A cell that is farther apart than this once the accused is back may be the one [standard deviations]. */
    private static final double SUSPECT = 2.5;
    private static final int MOST = 6;
    private static final int MOST_SWAPS = 4;

    private final Rows rows;
    private final Boat boat;
    private final Pen pen;

    Rivals(Rows rows, Boat boat, Pen pen) {
        this.rows = rows;
        this.boat = boat;
        this.pen = pen;
    }

    Boat boat() {
        return boat;
    }

    /** Accuses the other where that is better. */
    void settle() {
        for (int swap = 0; swap < MOST_SWAPS; swap++) {
            double best = cost() - 1;
            int accused = -1;
            int rival = -1;
            for (int c : accused()) {
                for (int other : suspectsInsteadOf(c)) {
                    double cost = costIfSwapped(c, other);
                    if (cost < best) {
                        best = cost;
                        accused = c;
                        rival = other;
                    }
                }
            }
            if (accused < 0) {
                return;
            }
            boat.takeBack(accused);
            boat.leaveOut(rival);
            boat.refit();
        }
    }

    /** By how much the best other accusation is worse than the one of this cell. */
    double leadOf(int cell) {
        double cost = cost();
        double lead = Double.POSITIVE_INFINITY;
        for (int other : suspectsInsteadOf(cell)) {
            lead = Math.min(lead, costIfSwapped(cell, other) - cost);
        }
        return lead;
    }

    List<Integer> accused() {
        return IntStream.range(0, rows.cells().size()).filter(c -> boat.isOut(c) && boat.isSeen(c)).boxed().toList();
    }

    Optional<Explanation> explanation(int cell) {
        Cell which = rows.cells().get(cell);
        return Explanation.of(which, rows.row(which).measure(), boat.foretold(cell), pen);
    }

    private List<Integer> suspectsInsteadOf(int cell) {
        boat.takeBack(cell);
        List<Integer> suspects = IntStream.range(0, rows.cells().size())
                .filter(c -> c != cell && boat.isSeen(c) && !boat.isOut(c) && Math.abs(boat.apart(c).t()) > SUSPECT)
                .boxed()
                .sorted(Comparator.comparingDouble(c -> -Math.abs(boat.apart(c).t())))
                .limit(MOST)
                .toList();
        boat.leaveOut(cell);
        return suspects;
    }

    private double costIfSwapped(int cell, int other) {
        boat.takeBack(cell);
        boat.leaveOut(other);
        double cost = cost();
        boat.takeBack(other);
        boat.leaveOut(cell);
        return cost;
    }

    /** Minus twice the logarithm of the likelihood of the table as it is accused. */
    double cost() {
        double cost = boat.costOfThoseIn();
        for (int c : accused()) {
            cost += explanation(c).map(Explanation::cost).orElse(Explanation.NONE);
        }
        return cost;
    }
}
