package org.garboard.offsets;

import java.util.ArrayList;
import java.util.List;

/**
 * Lengths that no boat has: the unit is wrong, or a decimal mark was lost. The limits are our choice, because
 * the jobs this program does are boats' and small ships', and a bottom beyond them does not fit into the
 * memory that the search of it may take.
 */
final class SizeFaults {
    private static final double LONGEST = 100;
    private static final double WIDEST = 10;
    private static final double HIGHEST = 20;

    private final OffsetTable table;
    private final LengthWords words;

    private SizeFaults(OffsetTable table) {
        this.table = table;
        this.words = new LengthWords(table.leastCount());
    }

    /** Of a table that is too long only this: its unit is wrong, and so is every cell. */
    static List<TableFault> of(OffsetTable table) {
        SizeFaults check = new SizeFaults(table);
        List<TableFault> length = check.length();
        return length.isEmpty() ? check.cells() : length;
    }

    private List<TableFault> length() {
        int last = table.stations().size() - 1;
        double length = last < 1 ? 0 : table.stations().get(last).x() - table.stations().get(0).x();
        return length <= LONGEST ? List.of() : List.of(TableFault.atStation(last, "the table is " + words.say(length)
            + " long, and " + words.say(LONGEST) + " is the most; see whether its unit is right"));
    }

    private List<TableFault> cells() {
        List<TableFault> faults = new ArrayList<>();
        for (int i = 0; i < table.lines().size(); i++) {
            TableLine line = table.lines().get(i);
            String measure = line.measure() == Measure.HEIGHT ? "height " : "half-breadth ";
            double most = line.measure() == Measure.HEIGHT ? HIGHEST : WIDEST;
            for (Entry entry : line.entries()) {
                if (Math.abs(entry.value()) > most) {
                    faults.add(TableFault.inCell(i, entry.station(), measure + words.say(entry.value()) + " is beyond "
                        + words.say(most) + ", the most; see whether its unit and its decimal mark are right"));
                }
            }
        }
        return faults;
    }
}
