package org.garboard.drawing.heat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class HeatScaleTest {

    @Test
    void exact_aClassEndsWhereItSays() {
        assertEquals(0, HeatScale.classOf(0));
        assertEquals(0, HeatScale.classOf(0.2));
        assertEquals(1, HeatScale.classOf(0.2001));
        assertEquals(4, HeatScale.classOf(1));
        assertEquals(5, HeatScale.classOf(1.0001));
        assertEquals(9, HeatScale.classOf(1.9));
        assertEquals(9, HeatScale.classOf(Double.POSITIVE_INFINITY));
    }

    /**
     * Lightness L* of CIE 1976 (IEC 61966-2-1 for the way from sRGB to luminance, D65): each class darker than the one before by a
     * like step, so that the picture reads in grey and to any eye.
     */
    @Test
    void law_lightnessFallsEvenly() {
        double mean = (lightness(0) - lightness(HeatScale.classes() - 1)) / (HeatScale.classes() - 1);
        for (int number = 1; number < HeatScale.classes(); number++) {
            double step = lightness(number - 1) - lightness(number);
            assertTrue(step > 0.75 * mean && step < 1.25 * mean, "step of " + step + " to class " + number + ", mean " + mean);
        }
    }

    private static double lightness(int number) {
        int rgb = Integer.parseInt(HeatScale.colour(number).substring(1), 16);
        double y = 0.2126 * linear(rgb >> 16) + 0.7152 * linear(rgb >> 8 & 255) + 0.0722 * linear(rgb & 255);
        return y > 216.0 / 24389 ? 116 * Math.cbrt(y) - 16 : 24389.0 / 27 * y;
    }

    private static double linear(int part) {
        double c = part / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }
}
