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

    @Test
    void badInput_notALength() {
        assertEquals("length NaN m cannot be printed",
            assertThrows(IllegalArgumentException.class, () -> FeetInches.toEighth(Double.NaN)).getMessage());
    }
}
