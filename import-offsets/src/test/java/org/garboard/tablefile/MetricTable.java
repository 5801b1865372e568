package org.garboard.tablefile;

import java.util.function.DoubleUnaryOperator;
import org.garboard.units.FixedDecimal;

/** Writes a table in metres to the millimetre, stations in columns, with a decimal comma and ; between the cells. */
final class MetricTable {
    private final double[] stations;
    private final StringBuilder csv = new StringBuilder();

    MetricTable(String title, String surface, double... stations) {
        this.stations = stations;
        csv.append("TABLE OF OFFSETS;").append(title).append("\nUnits;m;").append(surface)
            .append("\nNote;an invented boat, its lines are simple formulas rounded to the millimetre\nStation");
        for (int i = 0; i < stations.length; i++) {
            csv.append(';').append(i);
        }
        csv.append('\n');
        row("Distance from 0", x -> x);
    }

    MetricTable heights() {
        csv.append("HEIGHTS ABOVE BASE\n");
        return this;
    }

    MetricTable halfBreadths() {
        csv.append("HALF-BREADTHS FROM CENTRELINE\n");
        return this;
    }

    /** NaN leaves a cell blank. */
    MetricTable row(String label, DoubleUnaryOperator values) {
        csv.append(label);
        for (double x : stations) {
            double value = values.applyAsDouble(x);
            csv.append(';').append(value == value ? cell(value) : "-");
        }
        csv.append('\n');
        return this;
    }

    static String cell(double metres) {
        return FixedDecimal.format(metres, 3).replace('.', ',');
    }

    String text() {
        return csv.toString();
    }
}
