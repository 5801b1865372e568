package org.garboard.slips.pen;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.garboard.units.FixedDecimal;
import org.garboard.units.LengthUnit;

/** Writes decimals of a unit; counts in the last place that any value uses, exactly. */
final class DecimalPen extends Pen {
    private static final int MOST_PLACES = 6;
    /** Coarser steps are not looked for [m]; our choice. */
    private static final double COARSEST = 0.02;

    private final LengthUnit unit;
    /** Places of the finest value, and of nearly all. */
    private final int finest;
    private final int places;
    /** In the last of the finest places. */
    private final long step;

    private DecimalPen(LengthUnit unit, int finest, int places, long step) {
        this.unit = unit;
        this.finest = finest;
        this.places = places;
        this.step = step;
    }

    static DecimalPen of(LengthUnit unit, double[] values) {
        int finest = places(unit, values, 0);
        int places = finest;
        while (places > 0 && mostlyIn(values, unit.metres() * Math.pow(10, 1 - places))) {
            places--;
        }
        long step = power(finest - places);
        for (long times : new long[] {2, 5, 10, 20, 50}) {
            double wider = unit.metres() * Math.pow(10, -places) * times;
            if (wider <= COARSEST && mostlyIn(values, wider)) {
                step = power(finest - places) * times;
            }
        }
        return new DecimalPen(unit, finest, places, step);
    }

    private static int places(LengthUnit unit, double[] values, int from) {
        for (double value : values) {
            if (from < MOST_PLACES && !isIn(value, unit.metres() * Math.pow(10, -from))) {
                return places(unit, values, from + 1);
            }
        }
        return from;
    }

    private static long power(int of) {
        return Math.round(Math.pow(10, of));
    }

    private double metres(long n) {
        return n * unit.metres() / power(finest);
    }

    @Override
    public double step() {
        return metres(step);
    }

    @Override
    public List<Undone> undone(double written) {
        Map<Long, Undone> found = new LinkedHashMap<>();
        long n = Math.round(Math.abs(written) / unit.metres() * power(finest));
        int sign = written < 0 ? -1 : 1;
        for (int way = -1; way <= 1; way += 2) {
            if (unit == LengthUnit.FOOT || unit == LengthUnit.INCH) {
                add(found, sign * n, sign * n + way * power(finest) * (unit == LengthUnit.FOOT ? 1 : 12), SlipKind.FOOT);
            }
            if (unit == LengthUnit.INCH) {
                add(found, sign * n, sign * n + way * power(finest), SlipKind.INCH);
            }
        }
        swapped(found, sign * n);
        for (int by = 1; by <= 2; by++) {
            if (n % power(by) == 0) {
                add(found, sign * n, sign * n / power(by), SlipKind.MOVED_POINT);
            }
            add(found, sign * n, sign * n * power(by), SlipKind.MOVED_POINT);
        }
        return List.copyOf(found.values());
    }

    /** Neighbouring digits, those before and behind the point too, and a zero in front that is not written. */
    private void swapped(Map<Long, Undone> found, long n) {
        for (long low = power(finest - places); low <= Math.abs(n); low *= 10) {
            long right = n / low % 10;
            long left = n / low / 10 % 10;
            add(found, n, n + 9 * low * (right - left), SlipKind.SWAPPED_DIGITS);
        }
    }

    private void add(Map<Long, Undone> found, long from, long to, SlipKind kind) {
        if (to != from && to % step == 0) {
            String text = FixedDecimal.format((double) to / power(finest), places);
            found.putIfAbsent(to, new Undone(metres(to), text, kind));
        }
    }
}
