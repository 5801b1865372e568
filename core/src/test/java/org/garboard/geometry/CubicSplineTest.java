package org.garboard.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.hipparchus.analysis.interpolation.SplineInterpolator;
import org.hipparchus.analysis.polynomials.PolynomialSplineFunction;
import org.junit.jupiter.api.Test;

class CubicSplineTest {
    private static final double[] SITES = {0, 0.4, 0.9, 1.7, 2.2, 3.1, 4.0, 4.3};

    private static double[] values(java.util.function.DoubleUnaryOperator f) {
        return java.util.Arrays.stream(SITES).map(f).toArray();
    }

    @Test
    void exact_cubicIsMetEverywhere() {
        CubicSpline spline = CubicSpline.through(SITES, values(x -> 2 - x + 0.3 * x * x - 0.7 * x * x * x));
        for (double x = -0.2; x < 4.5; x += 0.037) {
            assertEquals(2 - x + 0.3 * x * x - 0.7 * x * x * x, spline.value(x), 1e-11);
            assertEquals(-1 + 0.6 * x - 2.1 * x * x, spline.derivative(1, x), 1e-10);
            assertEquals(-1 + 0.6 * x - 2.1 * x * x, spline.slope(x), 1e-10);
            assertEquals(0.6 - 4.2 * x, spline.derivative(2, x), 1e-9);
            assertEquals(-4.2, spline.derivative(3, x), 1e-8);
        }
    }

    @Test
    void exact_twoAndThreeValuesGiveLineAndParabola() {
        CubicSpline line = CubicSpline.through(new double[] {1, 3}, new double[] {5, 9});
        CubicSpline parabola = CubicSpline.through(new double[] {0, 1, 4}, new double[] {0, 1, 16});
        assertEquals(6.2, line.value(1.6), 1e-12);
        assertEquals(6.25, parabola.value(2.5), 1e-12);
        assertEquals(2, parabola.derivative(2, 3.3), 1e-10);
    }

    /**
     * Second opinion: Hipparchus' natural spline. Taking from our spline the cubic with the same end
     * curvatures leaves the one natural spline through the remaining values.
     */
    @Test
    void published_hipparchusNaturalSpline() {
        double[] values = values(x -> Math.sin(1.3 * x) + 0.2 * x * x);
        CubicSpline ours = CubicSpline.through(SITES, values);
        double a = SITES[0];
        double b = SITES[SITES.length - 1];
        double bendA = ours.derivative(2, a);
        double slope = (ours.derivative(2, b) - bendA) / (b - a);
        java.util.function.DoubleUnaryOperator cubic =
                x -> bendA * (x - a) * (x - a) / 2 + slope * Math.pow(x - a, 3) / 6;
        double[] rest = new double[SITES.length];
        for (int i = 0; i < rest.length; i++) {
            rest[i] = values[i] - cubic.applyAsDouble(SITES[i]);
        }
        PolynomialSplineFunction natural = new SplineInterpolator().interpolate(SITES, rest);
        for (double x = a; x <= b; x += 0.01) {
            assertEquals(natural.value(x) + cubic.applyAsDouble(x), ours.value(x), 1e-12);
        }
    }

    /** Fourth order up to the ends: half the spacing, a sixteenth of the error. */
    @Test
    void law_errorFallsWithTheFourthPower() {
        assertEquals(16, worst(16) / worst(32), 3);
    }

    private static double worst(int n) {
        double[] x = new double[n + 1];
        double[] f = new double[n + 1];
        for (int i = 0; i <= n; i++) {
            x[i] = 2.0 * i / n;
            f[i] = Math.exp(x[i]);
        }
        CubicSpline spline = CubicSpline.through(x, f);
        double worst = 0;
        for (double t = 0; t <= 2; t += 1e-3) {
            worst = Math.max(worst, Math.abs(spline.value(t) - Math.exp(t)));
        }
        return worst;
    }
}
