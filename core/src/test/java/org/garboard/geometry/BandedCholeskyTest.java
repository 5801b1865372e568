package org.garboard.geometry;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class BandedCholeskyTest {

    /** Second differences with fixed ends: bending of a string, solution known. */
    @Test
    void exact_secondDifferences() {
        int n = 9;
        double[] band = new double[n * 2];
        double[] x = new double[n];
        for (int i = 0; i < n; i++) {
            band[2 * i] = i > 0 ? -1 : 0;
            band[2 * i + 1] = 2;
            x[i] = 1;
        }
        BandedCholesky.factor(band, n, 1).solve(x);
        for (int i = 0; i < n; i++) {
            assertEquals((i + 1) * (n - i) / 2.0, x[i], 1e-12);
        }
    }

    /** Of the same: diagonal entries of the inverse, and the form of the vector of ones from an index on. */
    @Test
    void exact_inverseFormOfSecondDifferences() {
        int n = 7;
        double[] band = new double[n * 2];
        for (int i = 0; i < n; i++) {
            band[2 * i] = i > 0 ? -1 : 0;
            band[2 * i + 1] = 2;
        }
        BandedCholesky factor = BandedCholesky.factor(band, n, 1);
        for (int from = 0; from < n; from++) {
            double[] unit = new double[n];
            unit[from] = 1;
            assertEquals((from + 1.0) * (n - from) / (n + 1), factor.inverseForm(unit, from), 1e-12);
            double[] ones = new double[n];
            double sum = 0;
            for (int i = from; i < n; i++) {
                ones[i] = 1;
                for (int j = from; j < n; j++) {
                    sum += (Math.min(i, j) + 1.0) * (n - Math.max(i, j)) / (n + 1);
                }
            }
            assertEquals(sum, factor.inverseForm(ones, from), 1e-12);
        }
    }

    @Test
    void badInput_indefinite() {
        assertThrows(IllegalArgumentException.class,
                () -> BandedCholesky.factor(new double[] {0, 1, 2, 1}, 2, 1));
    }

    /** Inverse of second differences with fixed ends: min(i, j) (n + 1 - max(i, j)) / (n + 1), counted from 1. */
    @Test
    void exact_inverseBandOfSecondDifferences() {
        int n = 7;
        double[] band = new double[n * 3];
        for (int i = 0; i < n; i++) {
            band[3 * i + 1] = i > 0 ? -1 : 0;
            band[3 * i + 2] = 2;
        }
        double[] inverse = BandedCholesky.factor(band, n, 2).inverseBand();
        for (int i = 0; i < n; i++) {
            for (int j = Math.max(0, i - 2); j <= i; j++) {
                assertEquals((j + 1.0) * (n - i) / (n + 1), inverse[3 * i + j - i + 2], 1e-12);
            }
        }
    }
}
