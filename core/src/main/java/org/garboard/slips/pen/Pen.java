package org.garboard.slips.pen;

import java.util.List;
import java.util.stream.DoubleStream;
import org.garboard.offsets.Entry;
import org.garboard.offsets.OffsetTable;

/** The hand that wrote a table: how finely, and what its slips do. */
public abstract sealed class Pen permits EighthsPen, DecimalPen {
    /** Cells that may be finer than the table: spoilt by a slip, or refined one by one. Share and least number. */
    private static final double FINER = 0.04;
    private static final int LEAST_FINER = 2;
    private static final double SLACK = 1e-6;

    public static Pen of(Writing writing, OffsetTable table) {
        double[] values = table.lines().stream().flatMap(line -> line.entries().stream())
                .mapToDouble(Entry::value).filter(value -> value != 0).toArray();
        return writing instanceof Writing.Decimals decimals
                ? DecimalPen.of(decimals.unit(), values) : EighthsPen.of(values);
    }

    /** The step to which nearly all values are rounded [m]. */
    public abstract double step();

    /** Every value that a slip may have spoilt into the written one [m], each once, likely kinds first. */
    public abstract List<Undone> undone(double written);

    /** Whether all values but a few are whole numbers of steps. */
    static boolean mostlyIn(double[] values, double step) {
        long finer = DoubleStream.of(values).filter(value -> !isIn(value, step)).count();
        return finer <= Math.max(LEAST_FINER, FINER * values.length);
    }

    static boolean isIn(double value, double step) {
        return Math.abs(value / step - Math.rint(value / step)) < SLACK;
    }
}
