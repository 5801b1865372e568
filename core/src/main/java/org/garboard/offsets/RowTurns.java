package org.garboard.offsets;

import java.util.ArrayList;
import java.util.List;

/**
 * Where a row of the table turns from bending one way to bending the other, by more than its rounding
 * explains: as a batten along it would show. Many a fair line turns once, hollow forward and round aft; a row
 * that turns oftener than its neighbours wants looking at.
 *
 * <p>Bend is the divided second difference of three neighbouring readings, s = 2 (d2 - d1) / (h1 + h2), with the
 * slopes d over the gaps h between them: the parabola's second derivative. Readings that are off by up to half the
 * least count e change it by at most 4 e / (h1 h2), so what is not larger counts as straight.
 *
 * @param row of the table
 * @param turns in order aft
 */
public record RowTurns(TableLine row, List<Turn> turns) {

    /**
     * One turn.
     *
     * @param before index of the last station that surely bends the old way
     * @param after index of the first that surely bends the new way
     */
    public record Turn(int before, int after) {
    }

    public RowTurns {
        turns = List.copyOf(turns);
    }

    /** The rows that turn, in the table's order. */
    public static List<RowTurns> of(OffsetTable table) {
        return table.lines().stream()
            .map(row -> new RowTurns(row, turns(row, table)))
            .filter(row -> !row.turns.isEmpty())
            .toList();
    }

    /** Each length by itself: at a step nothing is to be fair. */
    private static List<Turn> turns(TableLine row, OffsetTable table) {
        return table.lengths().stream().flatMap(run -> turnsOfLength(row.part(run), table.part(run)).stream()
            .map(turn -> new Turn(turn.before + run.from(), turn.after + run.from()))).toList();
    }

    private static List<Turn> turnsOfLength(TableLine row, OffsetTable table) {
        List<Turn> turns = new ArrayList<>();
        double bent = 0;
        int where = 0;
        for (int i = 1; i + 1 < row.entries().size(); i++) {
            double bend = sureBend(row.entries().subList(i - 1, i + 2), table);
            if (bend != 0) {
                int here = row.entries().get(i).station();
                if (bend * bent < 0) {
                    turns.add(new Turn(where, here));
                }
                bent = bend;
                where = here;
            }
        }
        return turns;
    }

    /** Divided second difference [1/m] where it is more than rounding makes; else 0, and where a station between is blank. */
    private static double sureBend(List<Entry> three, OffsetTable table) {
        if (three.get(2).station() - three.get(0).station() != 2) {
            return 0;
        }
        double h1 = table.stations().get(three.get(1).station()).x() - table.stations().get(three.get(0).station()).x();
        double h2 = table.stations().get(three.get(2).station()).x() - table.stations().get(three.get(1).station()).x();
        double d1 = (three.get(1).value() - three.get(0).value()) / h1;
        double d2 = (three.get(2).value() - three.get(1).value()) / h2;
        double bend = 2 * (d2 - d1) / (h1 + h2);
        double rounding = 4 * (table.leastCount() / 2) / (h1 * h2);
        return Math.abs(bend) > rounding * (1 + 1e-9) ? bend : 0;
    }
}
