package org.garboard.offsets;

import java.util.ArrayList;
import java.util.List;

/**
 * The faults that a table shows by itself: rows or cells that are missing or stand twice, stations out
 * of order, lines that cross, points on the wrong side of their line. Only what is certainly wrong is
 * a fault; a line that merely wobbles is a matter of fairness.
 */
public final class TableFaults {
    private final OffsetTable table;
    private final LengthWords words;
    private final List<TableFault> faults = new ArrayList<>();

    private TableFaults(OffsetTable table) {
        this.table = table;
        this.words = new LengthWords(table.leastCount());
    }

    /** Every fault of the table, rows first, then station by station from forward; empty if it can be lofted. */
    public static List<TableFault> of(OffsetTable table) {
        TableFaults check = new TableFaults(table);
        check.stations();
        check.rows();
        check.namedLines();
        check.faults.addAll(KeelFaults.of(table));
        check.faults.addAll(StrakeFaults.of(table));
        check.cells();
        check.faults.addAll(SizeFaults.of(table));
        check.faults.addAll(StepFaults.of(table));
        check.sections();
        return List.copyOf(check.faults);
    }

    /** A station can be looked at as soon as its named lines are complete, whatever is wrong elsewhere. */
    private void sections() {
        List<NamedLine> lines = NamedLine.fromKeelOutward(table);
        if (lines.stream().noneMatch(line -> line.kind() == LineKind.KEEL)
            || lines.stream().noneMatch(line -> line.kind() == LineKind.SHEER)) {
            return;
        }
        for (int i = 0; i < table.stations().size(); i++) {
            int station = i;
            if (lines.stream().allMatch(line -> line.at(table, station).filter(point -> point.y() >= 0).isPresent())) {
                faults.addAll(SectionFaults.at(table, lines, station));
            }
        }
    }

    private void stations() {
        List<Station> stations = table.stations();
        // two make a surface, straight from one to the other; whether that will do is for the reader of a file to say
        if (stations.size() < 2) {
            faults.add(TableFault.inTable("the table has " + stations.size()
                + " station(s); three are the least"));
        }
        for (int i = 1; i < stations.size(); i++) {
            Station before = stations.get(i - 1);
            Station station = stations.get(i);
            if (stations.subList(0, i).stream().anyMatch(other -> other.name().equals(station.name()))) {
                faults.add(TableFault.atStation(i, "station " + station.name()
                    + " is given twice; give each station its own name"));
            }
            boolean step = table.isAfterFace(i) && !table.isAfterFace(i - 1) && !station.name().equals(before.name());
            if (!(station.x() > before.x()) && !step) {
                faults.add(TableFault.atStation(i, "station " + station.name() + " stands " + words.say(station.x())
                    + " from 0, which is not aft of station " + before.name() + " at " + words.say(before.x())
                    + "; order the stations from forward aft, each at its own place"));
            }
        }
    }

    private void rows() {
        for (int i = 0; i < table.lines().size(); i++) {
            TableLine line = table.lines().get(i);
            if (!isInBothBlocks(line.kind()) && line.measure() != onlyMeasure(line)) {
                faults.add(TableFault.inLine(i, line.name() + " stands among the "
                    + (line.measure() == Measure.HEIGHT ? "heights" : "half-breadths")
                    + "; its place is among the " + (onlyMeasure(line) == Measure.HEIGHT ? "heights" : "half-breadths")
                    + (line.kind() == LineKind.KEEL ? " (half the width of a flat keel is called Half-siding)" : "")));
            }
            if (line.kind() == LineKind.BUTTOCK && line.level() <= 0) {
                faults.add(TableFault.inLine(i, line.name() + " stands " + words.say(line.level())
                    + " from the centreline; a buttock stands off it by more than 0"));
            }
            for (int j = 0; j < i; j++) {
                if (isSameLine(table.lines().get(j), line)) {
                    faults.add(TableFault.inLine(i, line.name() + " is given twice among the "
                        + (line.measure() == Measure.HEIGHT ? "heights" : "half-breadths") + "; leave one of the rows out"));
                    break;
                }
            }
        }
    }

    private static boolean isStrake(LineKind kind) {
        return kind == LineKind.STRAKE_INNER || kind == LineKind.STRAKE_OUTER;
    }

    private static boolean isInBothBlocks(LineKind kind) {
        return kind == LineKind.KEEL_TOP || kind == LineKind.KEEL_BOTTOM || isStrake(kind) || kind == LineKind.CHINE || kind == LineKind.SHEER;
    }

    private static Measure onlyMeasure(TableLine line) {
        return line.kind() == LineKind.KEEL || line.kind() == LineKind.BUTTOCK ? Measure.HEIGHT : Measure.HALF_BREADTH;
    }

    private static boolean isSameLine(TableLine a, TableLine b) {
        if (a.kind() != b.kind() || a.measure() != b.measure()) {
            return false;
        }
        return switch (a.kind()) {
            case KEEL, HALF_SIDING, RABBET, KEEL_TOP, KEEL_BOTTOM, SHEER, EDGE -> true;
            case CHINE, STRAKE_INNER, STRAKE_OUTER -> a.name().equals(b.name());
            case WATERLINE, BUTTOCK -> a.level() == b.level();
        };
    }

    private void namedLines() {
        List<NamedLine> lines = NamedLine.fromKeelOutward(table);
        if (lines.stream().noneMatch(line -> line.kind() == LineKind.KEEL)) {
            faults.add(TableFault.inTable("no row gives the keel; add \"Keel\" to the heights"));
        }
        if (lines.stream().noneMatch(line -> line.kind() == LineKind.SHEER)) {
            faults.add(TableFault.inTable("no row gives the sheer; add \"Sheer\" to the heights and to the half-breadths"));
        }
        for (NamedLine line : lines) {
            if (isInBothBlocks(line.kind())) {
                if (line.heights().isEmpty()) {
                    faults.add(TableFault.inLine(line.row(), missingBlock(line, "half-breadths", "heights")));
                } else if (line.halfBreadths().isEmpty()) {
                    faults.add(TableFault.inLine(line.row(), missingBlock(line, "heights", "half-breadths")));
                }
            }
        }
    }

    private static String missingBlock(NamedLine line, String given, String missing) {
        return line.name() + " has " + given + " but no " + missing + "; add a row \"" + line.name()
            + "\" to the " + missing;
    }

    private void cells() {
        for (int i = 0; i < table.lines().size(); i++) {
            TableLine line = table.lines().get(i);
            boolean named = line.kind() != LineKind.WATERLINE && line.kind() != LineKind.BUTTOCK
                && line.kind() != LineKind.KEEL_BOTTOM && !isStrake(line.kind());
            for (int station = 0; station < table.stations().size(); station++) {
                if (named && line.at(station).isEmpty()) {
                    faults.add(TableFault.inCell(i, station, "blank; " + line.name() + " must be given at every station"));
                }
                if (line.measure() == Measure.HALF_BREADTH && line.at(station).orElse(0) < 0) {
                    faults.add(TableFault.inCell(i, station, "half-breadth " + words.say(line.at(station).getAsDouble())
                        + " is negative; half-breadths are 0 or more"));
                }
            }
        }
    }
}
