package org.garboard.flow.layer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrictionLineTest {

    /** Savitsky, Marine Technology 1(1), 1964, Tables 1 and 2: printed Reynolds numbers and coefficients. */
    @ParameterizedTest
    @CsvSource({"3.61e8, .00174", "2.42e8, .00184", "1.73e8, .00192", "3.22e8, .00177"})
    void published_schoenherrInSavitskysTables(double reynolds, double printed) {
        assertEquals(printed, FrictionLine.SCHOENHERR.mean(reynolds), 5e-6);
    }

    /** Independent computation. */
    @ParameterizedTest
    @CsvSource({"1e7, .002934", "1e8, .002072", "1e9, .001531", "3.61e8, .001742", "2.42e8, .001836", "1.73e8, .001921", "3.22e8, .001768"})
    void independent_schoenherr(double reynolds, double value) {
        assertEquals(value, FrictionLine.SCHOENHERR.mean(reynolds), 5e-7);
    }

    @Test
    void exact_ittc57() {
        assertEquals(.003, FrictionLine.ITTC_57.mean(1e7), 1e-15);
        assertEquals(.075 / 36, FrictionLine.ITTC_57.mean(1e8), 1e-15);
        assertEquals(.0015306, FrictionLine.ITTC_57.mean(1e9), 5e-8);
    }

    @Test
    void law_schoenherrsEquationIsMet() {
        for (double reynolds = 1e5; reynolds < 1e11; reynolds *= 3) {
            double c = FrictionLine.SCHOENHERR.mean(reynolds);
            assertEquals(Math.log10(reynolds * c), 0.242 / Math.sqrt(c), 1e-11);
        }
    }

    /** White's line stays within 7 % of Schoenherr's (5 % above it at 3e8): two lines fitted to different data, one plate; a slip in either is larger. */
    @Test
    void law_theLinesAgree() {
        for (double reynolds = 1e6; reynolds <= 1e9; reynolds *= 2) {
            double schoenherr = FrictionLine.SCHOENHERR.mean(reynolds);
            assertEquals(schoenherr, FrictionLine.WHITE.mean(reynolds), 0.07 * schoenherr);
        }
    }

    @Test
    void belowItsRangeThereIsNoFigure() {
        assertEquals("friction line: Reynolds number 99000.0; it must be 1e5 or more",
            assertThrows(IllegalArgumentException.class, () -> FrictionLine.SCHOENHERR.mean(99_000)).getMessage());
    }
}
