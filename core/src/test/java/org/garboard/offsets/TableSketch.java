package org.garboard.offsets;

import java.util.ArrayList;
import java.util.List;

/** Puts a table together for a test; {@code NaN} leaves a cell blank. Lengths in metres. */
final class TableSketch {
    static final double BLANK = Double.NaN;

    private final double leastCount;
    private final List<Station> stations = new ArrayList<>();
    private final List<TableLine> lines = new ArrayList<>();

    TableSketch(double leastCount, double... xs) {
        this.leastCount = leastCount;
        for (double x : xs) {
            stations.add(new Station(String.valueOf(stations.size()), x));
        }
    }

    TableSketch station(String name, double x) {
        stations.add(new Station(name, x));
        return this;
    }

    TableSketch keel(double... heights) {
        return row(LineKind.KEEL, "Keel", 0, Measure.HEIGHT, heights);
    }

    TableSketch halfSiding(double... halfBreadths) {
        return row(LineKind.HALF_SIDING, "Half-siding", 0, Measure.HALF_BREADTH, halfBreadths);
    }

    TableSketch chine(String name, double[] halfBreadths, double[] heights) {
        row(LineKind.CHINE, name, 0, Measure.HEIGHT, heights);
        return row(LineKind.CHINE, name, 0, Measure.HALF_BREADTH, halfBreadths);
    }

    TableSketch sheer(double[] halfBreadths, double[] heights) {
        row(LineKind.SHEER, "Sheer", 0, Measure.HEIGHT, heights);
        return row(LineKind.SHEER, "Sheer", 0, Measure.HALF_BREADTH, halfBreadths);
    }

    TableSketch waterline(double level, double... halfBreadths) {
        return row(LineKind.WATERLINE, "WL " + level, level, Measure.HALF_BREADTH, halfBreadths);
    }

    TableSketch buttock(double distance, double... heights) {
        return row(LineKind.BUTTOCK, "Buttock " + distance, distance, Measure.HEIGHT, heights);
    }

    TableSketch row(LineKind kind, String name, double level, Measure measure, double... values) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < values.length; i++) {
            if (!Double.isNaN(values[i])) {
                entries.add(new Entry(i, values[i]));
            }
        }
        lines.add(new TableLine(kind, name, level, measure, entries));
        return this;
    }

    OffsetTable table() {
        return new OffsetTable("sketch", SkinSurface.OUTSIDE_OF_SKIN, leastCount, stations, lines);
    }

    static double[] of(double... values) {
        return values;
    }
}
