package org.garboard.offsets;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What is wrong with the steps of a table, each given by two stations at one place. */
final class StepFaults {
    /** Between two stations a length is straight along; nothing shows how it curves. */
    private static final int LEAST_STATIONS = 3;

    private final OffsetTable table;
    private final LengthWords words;
    private final List<TableFault> faults = new ArrayList<>();

    private StepFaults(OffsetTable table) {
        this.table = table;
        this.words = new LengthWords(table.leastCount());
    }

    static List<TableFault> of(OffsetTable table) {
        StepFaults check = new StepFaults(table);
        if (table.lengths().size() > 1) {
            check.lengths();
            for (int station = 1; station < table.stations().size(); station++) {
                if (table.isAfterFace(station)) {
                    check.step(station);
                }
            }
        }
        return check.faults;
    }

    private String name(int station) {
        return "station " + table.stations().get(station).name();
    }

    private void lengths() {
        for (StationRun length : table.lengths()) {
            if (length.size() < LEAST_STATIONS && table.lengths().stream().allMatch(each -> each.size() > 1)) {
                faults.add(TableFault.atStation(length.from(), "the length from " + name(length.from()) + " to "
                    + name(length.to() - 1) + " has " + length.size() + " stations of its own, and three are the least,"
                    + " for between two nothing tells how the skin curves along it; add one between them"));
            } else if (length.size() < 2) {
                faults.add(TableFault.atStation(length.from(), name(length.from())
                    + " is alone between two ends of the skin; a length of the hull needs three stations of its own"));
            }
        }
        if (!table.surface().equals(SkinSurface.OUTSIDE_OF_SKIN)) {
            faults.add(TableFault.inTable("the table is drawn to " + table.surface().words() + " and has a step;"
                + " the outside of a stepped bottom cannot be drawn from its inside yet; give offsets to outside of skin"));
        }
    }

    private void step(int after) {
        if (table.lines().stream().allMatch(line -> line.at(after).equals(line.at(after - 1)))) {
            faults.add(TableFault.atStation(after, name(after) + " stands where " + name(after - 1)
                + " does and has the same values; two stations at one place are the two faces of a step;"
                + " leave one of them out, or give each face its own values"));
            return;
        }
        for (int row = 0; row < table.lines().size(); row++) {
            TableLine line = table.lines().get(row);
            OptionalDouble forward = line.at(after - 1);
            OptionalDouble aft = line.at(after);
            if (isOnBottom(line) && forward.isPresent() && aft.isPresent()
                    && aft.getAsDouble() < forward.getAsDouble() - table.leastCount() / 2) {
                faults.add(TableFault.inCell(row, after, "the step goes the wrong way: its after face stands at "
                    + words.say(aft.getAsDouble()) + " here, below the forward face's " + words.say(forward.getAsDouble())
                    + ", and would catch the water; the after face of a step is the higher one"));
            }
        }
    }

    private static boolean isOnBottom(TableLine line) {
        return line.measure() == Measure.HEIGHT && line.kind() != LineKind.SHEER;
    }
}
