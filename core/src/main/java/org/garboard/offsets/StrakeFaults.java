package org.garboard.offsets;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** What is wrong with the rows of lifting strakes, and with readings taken on a strake instead of on the skin. */
final class StrakeFaults {
    private static final List<String> WHERE = List.of("its inner edge to the heights", "its inner edge to the half-breadths",
        "its outer edge to the heights", "its outer edge to the half-breadths");

    private final OffsetTable table;
    private final LengthWords words;
    private final List<TableFault> faults = new ArrayList<>();

    private StrakeFaults(OffsetTable table) {
        this.table = table;
        this.words = new LengthWords(table.leastCount());
    }

    static List<TableFault> of(OffsetTable table) {
        StrakeFaults check = new StrakeFaults(table);
        StrakeRows.of(table).forEach(check::strake);
        return check.faults;
    }

    private void strake(StrakeRows strake) {
        int known = strake.rows().stream().filter(row -> row >= 0).findFirst().orElseThrow();
        for (int place = 0; place < WHERE.size(); place++) {
            if (strake.rows().get(place) < 0) {
                faults.add(TableFault.inLine(known, strake.name() + " lacks a row; add " + WHERE.get(place)));
            }
        }
        if (!strake.rows().contains(-1)) {
            stretch(strake);
            for (int station = 0; station < table.stations().size(); station++) {
                across(strake, station);
            }
        }
    }

    /** All four rows from the same first station to the same last. */
    private void stretch(StrakeRows strake) {
        List<Entry> entries = table.lines().get(strake.rows().get(0)).entries();
        if (entries.size() < 2) {
            faults.add(TableFault.inLine(strake.rows().get(0), strake.name() + " is given at " + entries.size()
                + " station(s); two are the least"));
            return;
        }
        int first = entries.get(0).station();
        int last = entries.get(entries.size() - 1).station();
        for (int row : strake.rows()) {
            for (int station = 0; station < table.stations().size(); station++) {
                boolean wanted = station >= first && station <= last;
                if (wanted != table.lines().get(row).at(station).isPresent()) {
                    faults.add(TableFault.inCell(row, station, (wanted ? "blank; " : "given here; ") + strake.name()
                        + " runs from station " + table.stations().get(first).name() + " to station "
                        + table.stations().get(last).name() + ", fill its four rows there and nowhere else"));
                }
            }
        }
    }

    private void across(StrakeRows strake, int station) {
        OptionalDouble inner = table.lines().get(strake.rows().get(StrakeRows.INNER_BREADTH)).at(station);
        OptionalDouble outer = table.lines().get(strake.rows().get(StrakeRows.OUTER_BREADTH)).at(station);
        if (inner.isEmpty() || outer.isEmpty()) {
            return;
        }
        if (outer.getAsDouble() <= inner.getAsDouble()) {
            faults.add(TableFault.inCell(strake.rows().get(StrakeRows.OUTER_BREADTH), station, "half-breadth "
                + words.say(outer.getAsDouble()) + " is not outboard of the inner edge's " + words.say(inner.getAsDouble())));
        }
        for (int row = 0; row < table.lines().size(); row++) {
            TableLine line = table.lines().get(row);
            if (line.kind() == LineKind.BUTTOCK && line.at(station).isPresent() && line.level() > inner.getAsDouble() + table.leastCount()
                    && line.level() < outer.getAsDouble() - table.leastCount()) {
                faults.add(TableFault.inCell(row, station, "lies between the edges of " + strake.name() + " (" + words.say(inner.getAsDouble())
                    + " and " + words.say(outer.getAsDouble()) + "): it reads the strake and not the skin; leave the cell blank"));
            }
        }
    }
}
