package org.garboard.slips.pen;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import org.garboard.units.LengthUnit;

/** Writes feet-inches-eighths; counts in sixteenths of an inch, exactly. */
final class EighthsPen extends Pen {
    private static final double SIXTEENTH = LengthUnit.INCH.metres() / 16;
    private static final int FOOT = 192;
    private static final int INCH = 16;
    private static final int EIGHTH = 2;
    private static final int[] STEPS = {8, 4, 2};

    private final int step;

    private EighthsPen(int step) {
        this.step = step;
    }

    static EighthsPen of(double[] values) {
        for (int step : STEPS) {
            if (mostlyIn(values, step * SIXTEENTH)) {
                return new EighthsPen(step);
            }
        }
        return new EighthsPen(1);
    }

    @Override
    public double step() {
        return step * SIXTEENTH;
    }

    @Override
    public List<Undone> undone(double written) {
        Map<Integer, Undone> found = new LinkedHashMap<>();
        int n = (int) Math.rint(Math.abs(written) / SIXTEENTH);
        int sign = written < 0 ? -1 : 1;
        for (int way = -1; way <= 1; way += 2) {
            add(found, sign * n, sign * n + way * FOOT, SlipKind.FOOT);
            add(found, sign * n, sign * n + way * INCH, SlipKind.INCH);
        }
        for (int swapped : swapped(n)) {
            add(found, sign * n, sign * swapped, SlipKind.SWAPPED_DIGITS);
        }
        for (int eighths = 1; eighths < 8; eighths++) {
            add(found, sign * n, sign * n - eighths * EIGHTH, SlipKind.EIGHTHS);
            add(found, sign * n, sign * n + eighths * EIGHTH, SlipKind.EIGHTHS);
        }
        return List.copyOf(found.values());
    }

    private void add(Map<Integer, Undone> found, int from, int to, SlipKind kind) {
        if (to != from && (to - from) % step == 0) {
            found.putIfAbsent(to, new Undone(to * SIXTEENTH, (to < 0 ? "-" : "") + text(Math.abs(to)), kind));
        }
    }

    /** An odd sixteenth is written behind the eighth below it. */
    private static String text(int n) {
        return n / FOOT + "-" + n % FOOT / INCH + "-" + n % INCH / EIGHTH + (n % EIGHTH == 1 ? "+" : "");
    }

    /** Neighbouring digits changed for each other, across the dashes too; 1-2-3 may stand for 01-02-3. */
    private static List<Integer> swapped(int n) {
        List<Integer> all = new ArrayList<>();
        for (String feet : forms(n / FOOT)) {
            for (String inches : forms(n % FOOT / INCH)) {
                String text = feet + "-" + inches + "-" + n % INCH / EIGHTH;
                for (int i = 0; i + 1 < text.length(); i++) {
                    int next = text.charAt(i + 1) == '-' ? i + 2 : i + 1;
                    if (text.charAt(i) != '-' && text.charAt(i) != text.charAt(next)) {
                        read(exchanged(text, i, next)).ifPresent(eighths -> all.add(eighths + n % EIGHTH));
                    }
                }
            }
        }
        return all;
    }

    private static List<String> forms(int number) {
        return number < 10 ? List.of("" + number, "0" + number) : List.of("" + number);
    }

    private static String exchanged(String text, int one, int other) {
        char[] digits = text.toCharArray();
        digits[one] = text.charAt(other);
        digits[other] = text.charAt(one);
        return new String(digits);
    }

    private static OptionalInt read(String text) {
        String[] parts = text.split("-");
        int inches = Integer.parseInt(parts[1]);
        int eighths = Integer.parseInt(parts[2]);
        return inches < 12 && eighths < 8
                ? OptionalInt.of(Integer.parseInt(parts[0]) * FOOT + inches * INCH + eighths * EIGHTH)
                : OptionalInt.empty();
    }
}
