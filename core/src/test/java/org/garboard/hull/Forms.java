package org.garboard.hull;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;
import java.util.function.DoubleUnaryOperator;
import org.garboard.offsets.Entry;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.Measure;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.SkinSurface;
import org.garboard.offsets.SkinThickness;
import org.garboard.offsets.Station;
import org.garboard.offsets.TableLine;

/** Writes tables of closed-form hulls. */
public final class Forms {
    private final double[] stations;
    private final double leastCount;
    private double phase;
    private SkinSurface surface = SkinSurface.OUTSIDE_OF_SKIN;
    private final List<TableLine> lines = new ArrayList<>();

    public Forms(double leastCount, double... stations) {
        this.leastCount = leastCount;
        this.stations = stations;
    }

    public static double[] even(double from, double to, int count) {
        double[] x = new double[count];
        for (int i = 0; i < count; i++) {
            x[i] = from + (to - from) * i / (count - 1);
        }
        return x;
    }

    private double rounded(double value) {
        return leastCount > 0 ? (Math.rint(value / leastCount + phase) - phase) * leastCount : value;
    }

    /** Shifts the steps to which values are rounded by a part of a step. */
    public Forms phase(double part) {
        this.phase = part;
        return this;
    }

    /** Draws the table to the inside of planking so thick [m]. */
    public Forms inside(double thickness) {
        return inside(new SkinThickness.Everywhere(thickness));
    }

    public Forms inside(SkinThickness thickness) {
        this.surface = new SkinSurface.Inside(SkinSurface.Covering.PLANKING, thickness);
        return this;
    }

    private Forms add(LineKind kind, String name, double level, Measure measure, DoubleUnaryOperator value) {
        List<Entry> entries = new ArrayList<>();
        for (int i = 0; i < stations.length; i++) {
            double v = value.applyAsDouble(stations[i]);
            if (v == v) {
                entries.add(new Entry(i, rounded(v)));
            }
        }
        lines.add(new TableLine(kind, name, level, measure, entries));
        return this;
    }

    public Forms keel(DoubleUnaryOperator z) {
        return add(LineKind.KEEL, "Keel", 0, Measure.HEIGHT, z);
    }

    public Forms halfSiding(DoubleUnaryOperator y) {
        return add(LineKind.HALF_SIDING, "Half-siding", 0, Measure.HALF_BREADTH, y);
    }

    /** A row in one block alone. */
    public Forms row(LineKind kind, String name, Measure measure, DoubleUnaryOperator value) {
        return add(kind, name, 0, measure, value);
    }

    public Forms named(LineKind kind, String name, DoubleUnaryOperator y, DoubleUnaryOperator z) {
        return add(kind, name, 0, Measure.HEIGHT, z).add(kind, name, 0, Measure.HALF_BREADTH, y);
    }

    /** Half-breadths y(x, z); NaN where the waterline does not cross. */
    public Forms waterline(double z, DoubleBinaryOperator y) {
        return add(LineKind.WATERLINE, "WL " + z, z, Measure.HALF_BREADTH, x -> y.applyAsDouble(x, z));
    }

    /** Heights z(x, y); NaN where the buttock does not cross. */
    public Forms buttock(double y, DoubleBinaryOperator z) {
        return add(LineKind.BUTTOCK, "Buttock " + y, y, Measure.HEIGHT, x -> z.applyAsDouble(x, y));
    }

    public OffsetTable table() {
        List<Station> named = new ArrayList<>();
        for (int i = 0; i < stations.length; i++) {
            named.add(new Station(String.valueOf(i), stations[i]));
        }
        return new OffsetTable("closed form", surface, leastCount, named, lines);
    }
}
