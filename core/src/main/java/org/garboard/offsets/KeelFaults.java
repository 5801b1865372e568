package org.garboard.offsets;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import java.util.stream.IntStream;

/** What is wrong between the rows of a keel: a box keel is skin, a keel below the rabbet hangs from it, and no boat has both. */
final class KeelFaults {
    private final OffsetTable table;
    private final LengthWords words;
    private final List<TableFault> faults = new ArrayList<>();

    private KeelFaults(OffsetTable table) {
        this.table = table;
        this.words = new LengthWords(table.leastCount());
    }

    static List<TableFault> of(OffsetTable table) {
        KeelFaults check = new KeelFaults(table);
        check.boxKeel();
        check.rabbet();
        check.bottom();
        return check.faults;
    }

    private void boxKeel() {
        int top = row(LineKind.KEEL_TOP);
        if (top >= 0 && row(LineKind.HALF_SIDING) < 0) {
            faults.add(TableFault.inLine(top, name(top) + " is given, but not how wide the keel is at its bottom;"
                + " add \"Half-siding\" to the half-breadths"));
        }
    }

    private void rabbet() {
        int rabbet = row(LineKind.RABBET);
        if (rabbet < 0) {
            return;
        }
        for (LineKind other : List.of(LineKind.HALF_SIDING, LineKind.KEEL_TOP)) {
            int row = row(other);
            if (row >= 0) {
                faults.add(TableFault.inLine(row, name(row) + " is given beside " + name(rabbet) + "; a keel below the skin has"
                    + " Half-siding at rabbet and Keel bottom, a box keel that is skin has Half-siding and Top of keel"));
            }
        }
        if (!table.surface().equals(SkinSurface.OUTSIDE_OF_SKIN)) {
            faults.add(TableFault.inLine(rabbet, name(rabbet) + " is given in a table to " + table.surface().words()
                + "; where the outside of the planking meets the keel cannot be drawn from that yet: give the table to the outside"));
        }
    }

    private void bottom() {
        int bottom = row(LineKind.KEEL_BOTTOM, Measure.HEIGHT);
        int siding = row(LineKind.KEEL_BOTTOM, Measure.HALF_BREADTH);
        int keel = row(LineKind.KEEL, Measure.HEIGHT);
        if (bottom < 0) {
            if (siding >= 0) {
                faults.add(TableFault.inLine(siding, name(siding) + " has half-breadths but no heights; add a row \"Keel bottom\" to the heights"));
            }
            return;
        }
        if (keel >= 0 && !name(keel).toLowerCase(Locale.ROOT).startsWith("rabbet")) {
            faults.add(TableFault.inLine(keel, name(keel) + " is given beside " + name(bottom) + "; call the row Rabbet where the skin"
                + " meets the keel, or, if the keel is a box and part of the skin, leave " + name(bottom) + " out and give Top of keel"));
        } else if (row(LineKind.RABBET) < 0) {
            faults.add(TableFault.inLine(bottom, name(bottom) + " is given, but not how wide the keel is where the skin meets it;"
                + " add \"Half-siding at rabbet\" to the half-breadths"));
        }
        stretch(bottom);
        if (siding >= 0) {
            sameStations(bottom, siding);
        }
        if (keel >= 0) {
            below(bottom, keel);
        }
    }

    private void stretch(int bottom) {
        List<Entry> entries = table.lines().get(bottom).entries();
        if (entries.size() < 2) {
            faults.add(TableFault.inLine(bottom, name(bottom) + " is given at " + entries.size() + " station(s); two are the least"));
        }
        for (int i = 1; i < entries.size(); i++) {
            for (int gap = entries.get(i - 1).station() + 1; gap < entries.get(i).station(); gap++) {
                faults.add(TableFault.inCell(bottom, gap, "blank; " + name(bottom) + " must be given from where the keel begins"
                    + " to where it ends"));
            }
        }
    }

    private void sameStations(int bottom, int siding) {
        for (int station = 0; station < table.stations().size(); station++) {
            boolean has = table.lines().get(bottom).at(station).isPresent();
            if (has != table.lines().get(siding).at(station).isPresent()) {
                faults.add(TableFault.inCell(siding, station, has ? "blank; the keel's bottom has a height here, give its half-siding too"
                    : "given where the keel's bottom has no height; give both or neither"));
            }
        }
    }

    private void below(int bottom, int keel) {
        for (Entry entry : table.lines().get(bottom).entries()) {
            double rabbet = table.lines().get(keel).at(entry.station()).orElse(Double.NaN);
            if (entry.value() > rabbet + table.leastCount()) {
                faults.add(TableFault.inCell(bottom, entry.station(), "height " + words.say(entry.value()) + " is above "
                    + name(keel) + "'s " + words.say(rabbet)));
            }
        }
    }

    private String name(int row) {
        return table.lines().get(row).name();
    }

    /** The first row of a kind; -1 without one. */
    private int row(LineKind kind) {
        return first(row -> row.kind() == kind);
    }

    private int row(LineKind kind, Measure measure) {
        return first(row -> row.kind() == kind && row.measure() == measure);
    }

    private int first(Predicate<TableLine> wanted) {
        return IntStream.range(0, table.lines().size()).filter(i -> wanted.test(table.lines().get(i))).findFirst().orElse(-1);
    }
}
