package org.garboard.hull;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.garboard.offsets.OffsetTable;

/** Prints the table of fairing errors in DEVELOPERS.md; a program, not a test. */
final class FairingFigures {
    private static final int PHASES = 8;

    private FairingFigures() {
    }

    public static void main(String[] arguments) {
        System.out.println("| rounded to | drawn | stretch | deadrise [deg] | slope fore and aft [deg] | curvature [1/m] |");
        System.out.println("| --- | --- | --- | --- | --- | --- |");
        double[] leastCounts = {0.0254 / 8, 1e-3, 1e-4};
        String[] names = {"an eighth of an inch", "a millimetre", "0.1 mm"};
        for (int i = 0; i < leastCounts.length; i++) {
            for (Fit fit : Fit.values()) {
                List<Hull> hulls = new ArrayList<>();
                List<Bottoms> forms = new ArrayList<>();
                for (Bottoms form : Bottoms.all()) {
                    for (int phase = 0; phase < PHASES; phase++) {
                        OffsetTable table = form.table(leastCounts[i], phase / (double) PHASES);
                        hulls.add(fit.draw(table));
                        forms.add(form);
                    }
                }
                print(names[i], fit, "aft of 10 %", hulls, forms, 0.1, 1);
                print(names[i], fit, "bow", hulls, forms, 0, 0.1);
            }
        }
    }

    private static void print(String rounding, Fit fit, String stretch, List<Hull> hulls, List<Bottoms> forms,
                              double from, double to) {
        double[][] errors = new double[3][hulls.size()];
        for (int h = 0; h < hulls.size(); h++) {
            BottomErrors error = BottomErrors.of(hulls.get(h), forms.get(h), from, to);
            errors[0][h] = error.deadriseDegrees();
            errors[1][h] = error.buttockSlopeDegrees();
            errors[2][h] = error.curvature();
        }
        String words = fit == Fit.EXACT ? "through the points" : "within rounding";
        System.out.printf(Locale.ROOT, "| %s | %s | %s | %s | %s | %s |%n", rounding, words, stretch,
                spread(errors[0]), spread(errors[1]), spread(errors[2]));
    }

    private static String spread(double[] values) {
        Arrays.sort(values);
        int n = values.length;
        return String.format(Locale.ROOT, "%.3f / %.3f / %.3f", (values[n / 2 - 1] + values[n / 2]) / 2,
                values[(int) Math.round(0.95 * (n - 1))], values[n - 1]);
    }
}
