package org.garboard.hull;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class FairingTest {
    static final double EIGHTH = 0.0254 / 8;

    /** Root mean square of the deadrise error over a stretch of the bottom [deg]. */
    static double deadriseError(Hull hull, Bottoms form, double from, double to) {
        double sum = 0;
        int count = 0;
        for (int i = 1; i < 80; i++) {
            double x = Bottoms.LENGTH * i / 80;
            if (x < from * Bottoms.LENGTH || x > to * Bottoms.LENGTH) {
                continue;
            }
            for (int k = 0; k < 47; k++) {
                double y = form.chineHalfBreadth(x) * (0.04 + 0.92 * k / 46);
                double error = hull.at(x, y).orElseThrow().deadrise().radians() - Math.atan(form.slope(x, y));
                sum += error * error;
                count++;
            }
        }
        return Math.toDegrees(Math.sqrt(sum / count));
    }

    @Test
    void tmp() {
        for (double lc : new double[] {EIGHTH, 1e-3, 1e-4}) {
            for (boolean fair : new boolean[] {true, false}) {
                double[] errors = new double[32];
                double[] bow = new double[32];
                int n = 0;
                long t0 = System.nanoTime();
                StringBuilder b = new StringBuilder();
                for (Bottoms form : Bottoms.all()) {
                    for (int phase = 0; phase < 8; phase++) {
                        Hull hull = fair ? Hull.faired(form.table(lc, phase / 8.0)) : Hull.through(form.table(lc, phase / 8.0));
                        bow[n] = deadriseError(hull, form, 0, 0.1);
                        errors[n++] = deadriseError(hull, form, 0.1, 1);
                    }
                    double[] part = Arrays.copyOfRange(errors, n - 8, n); Arrays.sort(part);
                    b.append(String.format(Locale.ROOT, " %s %.3f", form.name(), (part[3] + part[4]) / 2));
                }
                Arrays.sort(errors);
                Arrays.sort(bow);
                System.out.printf(Locale.ROOT, "%.5f %s median %.3f p95 %.3f worst %.3f  bow %.2f %.2f %s %d ms each%n", lc, fair,
                        (errors[15] + errors[16]) / 2, errors[30], errors[31], bow[15], bow[31], b, (System.nanoTime() - t0) / 32000000);
            }
        }
        assertTrue(true);
    }
}
