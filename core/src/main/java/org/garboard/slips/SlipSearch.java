package org.garboard.slips;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import org.garboard.offsets.OffsetTable;
import org.garboard.slips.boat.Boat;
import org.garboard.slips.boat.Cell;
import org.garboard.slips.boat.Rows;
import org.garboard.slips.pen.Pen;
import org.garboard.slips.pen.Undone;
import org.garboard.slips.pen.Writing;

/** Looks for slips in a table of offsets; the table stays as it is. */
public final class SlipSearch {
    /** A length between steps, or a table without, that has fewer is not searched. */
    public static final int FEWEST_STATIONS = 5;

    /** Below this lead another value or another cell is not ruled out: odds of 150; our choice. */
    private static final double CLEAR = 10;
    /** No boat is fairer, nor drawn more finely [m]; our choice. */
    private static final double LEAST_SCATTER = 5e-5;
    /** A table that scatters more is not searched for what it would take to be fair [m]; our choice. */
    private static final double ROUGHEST = 6e-3;
    /** Share of the cells that may be slips, and a number that always may; our choice. */
    private static final double WILD = 0.1;
    private static final int FEW = 8;

    private final Rows rows;
    private final Pen pen;
    private final Rivals rivals;

    private SlipSearch(OffsetTable table, Pen pen) {
        this.rows = new Rows(table);
        this.pen = pen;
        this.rivals = asRoughAsItIs();
    }

    /** Before cells are accused: whether the table scatters more than its rounding does. */
    private Rivals asRoughAsItIs() {
        double scatter = Math.max(LEAST_SCATTER, pen.step() / Math.sqrt(12));
        Rivals best = sifted(scatter);
        for (int times = 2; times * scatter <= ROUGHEST && !best.accused().isEmpty(); times *= 2) {
            Rivals rougher = sifted(times * scatter);
            if (rougher.cost() >= best.cost()) {
                break;
            }
            best = rougher;
        }
        return best;
    }

    private Rivals sifted(double scatter) {
        Boat boat = new Boat(rows, scatter);
        new Sifting(rows, boat).sift();
        return new Rivals(rows, boat, pen);
    }

    /**
     * @param table with the named lines' rows; it may have faults that {@link org.garboard.offsets.TableFaults}
     *     tells, for a slip may have made them
     * @param writing how the table writes its lengths
     */
    public static SlipFindings in(OffsetTable table, Writing writing) {
        Optional<String> obstacle = Obstacle.to(table);
        if (obstacle.isPresent()) {
            return new SlipFindings.NotSearched(obstacle.get());
        }
        Pen pen = Pen.of(writing, table);
        List<Slip> slips = new ArrayList<>();
        for (Stretch stretch : Stretch.covering(table)) {
            SlipSearch search = new SlipSearch(stretch.of(table), pen);
            if (search.isWild()) {
                return new SlipFindings.NotSearched("so many cells do not go with the others that none can be told from them");
            }
            search.slips().stream()
                .filter(stretch::judges).map(stretch::inTable).forEach(slips::add);
        }
        slips.sort(Comparator.comparingInt(Slip::line).thenComparingInt(Slip::station));
        return new SlipFindings.Searched(slips);
    }

    private boolean isWild() {
        return rivals.accused().size() > Math.max(FEW, WILD * rows.cells().size());
    }

    private List<Slip> slips() {
        if (!rivals.accused().isEmpty()) {
            rivals.boat().chooseAgain();
            new Sifting(rows, rivals.boat()).sift();
            rivals.settle();
        }
        List<Slip> slips = new ArrayList<>();
        for (int c : rivals.accused()) {
            rivals.explanation(c).ifPresent(explanation -> slips.add(slip(c, explanation, rivals.leadOf(c))));
        }
        return slips;
    }

    private Slip slip(int c, Explanation explanation, double leadOfCell) {
        Cell cell = rows.cells().get(c);
        List<Doubt> doubts = new ArrayList<>();
        if (rows.isAtEnd(cell)) {
            doubts.add(Doubt.END_STATION);
        }
        if (explanation.lead() < CLEAR) {
            doubts.add(Doubt.OTHER_VALUE);
        }
        if (leadOfCell < CLEAR) {
            doubts.add(Doubt.OTHER_CELL);
        }
        Undone undone = explanation.undone();
        return new Slip(cell.row(), cell.station(), cell.written(), undone.value(), undone.text(), undone.kind(), doubts);
    }
}
