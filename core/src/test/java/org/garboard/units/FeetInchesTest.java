package org.garboard.units;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FeetInchesTest {

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
        "1410    | 4'-7 1/2\"  | 4-7-4",
        "1660    | 5'-5 3/8\"  | 5-5-3",
        "303.9   | 1'-0\"      | 1-0-0",
        "2.9     | 0'-0 1/8\"  | 0-0-1",
        "1.5     | 0'-0\"      | 0-0-0",
        "-1.5    | 0'-0\"      | 0-0-0",
        "0       | 0'-0\"      | 0-0-0",
        "-31.75  | -0'-1 1/4\" | -0-1-2",
        "12.7    | 0'-0 1/2\"  | 0-0-4",
        "19.05   | 0'-0 3/4\"  | 0-0-6",
        "22.225  | 0'-0 7/8\"  | 0-0-7",
        "11887.2 | 39'-0\"     | 39-0-0",
    })
    void exact_nearestEighth(double millimetres, String sheet, String table) {
        assertEquals(sheet, FeetInches.toEighth(millimetres / 1000));
        assertEquals(table, FeetInches.dashed(millimetres / 1000));
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
        "43     | 0'-1 11/16\"",
        "15     | 0'-0 9/16\"",
        "81     | 0'-3 3/16\"",
        "101.6  | 0'-4\"",
        "304.1  | 1'-0\"",
        "-14.2875 | -0'-0 9/16\"",
    })
    void exact_nearestSixteenth(double millimetres, String sheet) {
        assertEquals(sheet, FeetInches.toSixteenth(millimetres / 1000));
    }

    /** 1 mm is 1.26 thirty-seconds, 2 mm 1.26 sixteenths, 13 mm 8.19 sixteenths, 25.4 mm and 27 mm an inch and more. */
    @ParameterizedTest
    @CsvSource(delimiter = '|', quoteCharacter = '~', value = {
        "1 | 1/32\"", "2 | 1/16\"", "4 | 1/8\"", "5 | 3/16\"", "9 | 5/16\"", "13 | 1/2\"", "25.5 | 1\"", "27 | 1 1/16\"",
    })
    void exact_toleranceIsNeverWidened(double millimetres, String sheet) {
        assertEquals(sheet, FeetInches.atMost(millimetres / 1000));
    }

    @Test
    void badInput_toleranceTooFine() {
        assertEquals("a tolerance of 5.0E-4 m is finer than 1/32 in",
            assertThrows(IllegalArgumentException.class, () -> FeetInches.atMost(0.0005)).getMessage());
    }

    @Test
    void badInput_notALength() {
        assertEquals("length NaN m cannot be printed",
            assertThrows(IllegalArgumentException.class, () -> FeetInches.toEighth(Double.NaN)).getMessage());
    }
}
