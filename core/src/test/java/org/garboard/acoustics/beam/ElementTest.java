package org.garboard.acoustics.beam;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.garboard.acoustics.beam.Element.Plane;
import org.garboard.craft.SoundBeam;
import org.garboard.units.Angle;
import org.hipparchus.special.BesselJ;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class ElementTest {
    private static final Angle NONE = Angle.ofDegrees(0);

    /** M. Abramowitz, I. A. Stegun, Handbook of Mathematical Functions, table 9.1; remembered, and confirmed by the library. */
    @ParameterizedTest
    @CsvSource({"1, .4400506", "2, .5767248", "3, .3390590", "4, -.0660433", "5, -.3275791"})
    void published_besselJ1(double v, double expected) {
        assertEquals(expected, BesselJ.value(1, v), 5e-8);
        Disc disc = new Disc(10, 1);
        Angle angle = Angle.ofRadians(Math.asin(v / (10 * Math.PI)));
        assertEquals(2 * expected / v, disc.response(NONE, angle), 1e-7);
    }

    @Test
    void exact_nullsOfTheDisc() {
        assertEquals(0, BesselJ.value(1, Disc.FIRST_NULL), 1e-14);
        assertEquals(3.83170597, Disc.FIRST_NULL, 5e-9);
        assertEquals(0, BesselJ.value(1, 7.01558667), 2e-9);
        assertEquals(1.2197, Disc.FIRST_NULL / Math.PI, 5e-5);
        Disc disc = new Disc(0.075, 0.03);
        assertEquals(0, disc.response(disc.firstNull(Plane.ATHWART).orElseThrow(), NONE), 1e-12);
    }

    @Test
    void exact_halfPowerPoints() {
        assertEquals(Math.sqrt(0.5), 2 * BesselJ.value(1, Disc.HALF_POWER) / Disc.HALF_POWER, 1e-12);
        assertEquals(Math.sqrt(0.5), Math.sin(Rectangle.HALF_POWER) / Rectangle.HALF_POWER, 1e-12);
        assertEquals(1.61634, Disc.HALF_POWER, 5e-6);
        assertEquals(1.39156, Rectangle.HALF_POWER, 5e-6);
        assertEquals(58.9, Math.toDegrees(2 * Disc.HALF_POWER / Math.PI), 0.06);
        assertEquals(50.7, Math.toDegrees(2 * Rectangle.HALF_POWER / Math.PI), 0.06);
    }

    /** At -3.000 dB, a hair inside half power. */
    @Test
    void exact_minusThreeDecibels() {
        assertEquals(-3, 20 * Math.log10(2 * BesselJ.value(1, 1.61374) / 1.61374), 1e-4);
        assertEquals(-3, 20 * Math.log10(Math.sin(1.38935) / 1.38935), 1e-4);
    }

    @Test
    void exact_firstSideLobes() {
        assertEquals(-17.570, new Disc(0.1, 0.01).sideLobeDecibels(), 5e-4);
        assertEquals(-13.261, new Rectangle(0.1, 0.1, 0.01).sideLobeDecibels(), 5e-4);
        assertEquals(0, BesselJ.value(2, Disc.SIDE_LOBE), 1e-12);
        assertEquals(Rectangle.SIDE_LOBE, Math.tan(Rectangle.SIDE_LOBE), 1e-11);
    }

    /** Independent computation, speed of sound 1500 m/s. */
    @ParameterizedTest
    @CsvSource({"50, 75, 23.71, 29.20, .147, 17.90", "200, 45, 9.82, 11.73, .212, 25.51"})
    void independent_twoDiscs(double kHz, double mm, double width, double nullAngle, double nearField, double index) {
        Disc disc = new Disc(mm / 1000, 1.5 / kHz);
        // the width of that computation is the one at -3.000 dB, a hair inside half power; printed to 0.01 deg
        assertEquals(-3, 20 * Math.log10(disc.response(NONE, Angle.ofDegrees(width / 2))), 4e-3);
        assertEquals(nullAngle, disc.firstNull(Plane.ATHWART).orElseThrow().degrees(), 5.001e-3);
        assertEquals(nearField, disc.nearField(), 5.001e-4);
        assertEquals(index, disc.directivityIndex(), 5.001e-3);
        double a = mm / 2000;
        assertEquals(a * a / disc.wavelength() - disc.wavelength() / 4, disc.lastAxialMaximum(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"6, 1, .236", "6, 2, .948", "6, 3, 2.158", "6, 5, 6.233", "2.5, 5, 1.028", "2.5, 10, 4.209", "2.5, 20, 19.159"})
    void independent_echoLossOfATiltedDisc(double wavelengths, double degrees, double decibels) {
        assertEquals(decibels, new Disc(wavelengths, 1).echoLoss(NONE, Angle.ofDegrees(degrees)), 5.001e-4);
        assertEquals(decibels, new Disc(wavelengths, 1).echoLoss(Angle.ofDegrees(-degrees), NONE), 5.001e-4);
    }

    @Test
    void law_thereAndBackFromTheBeamWidth() {
        for (double degrees = 3; degrees < 60; degrees += 4) {
            Angle width = Angle.ofDegrees(degrees);
            assertEquals(degrees, Disc.ofHalfPowerWidth(width, 0.0075).halfPowerWidth(Plane.ATHWART).orElseThrow().degrees(), 1e-9);
            Rectangle face = Rectangle.ofHalfPowerWidths(width, Angle.ofDegrees(20), 0.0075);
            assertEquals(degrees, face.halfPowerWidth(Plane.FORE_AND_AFT).orElseThrow().degrees(), 1e-9);
            assertEquals(20, face.halfPowerWidth(Plane.ATHWART).orElseThrow().degrees(), 1e-9);
            assertEquals(-40 * Math.log10(Math.sqrt(0.5)), face.echoLoss(Angle.ofRadians(width.radians() / 2), NONE), 1e-9);
        }
    }

    @Test
    void law_aSmallFaceHasNoNullAndNoWidth() {
        assertTrue(new Disc(0.4, 1).halfPowerWidth(Plane.ATHWART).isEmpty());
        assertTrue(new Disc(1.2, 1).firstNull(Plane.ATHWART).isEmpty());
        assertTrue(new Disc(1.3, 1).firstNull(Plane.ATHWART).isPresent());
        assertTrue(new Rectangle(0.9, 2, 1).firstNull(Plane.FORE_AND_AFT).isEmpty());
        assertEquals(30, new Rectangle(0.9, 2, 1).firstNull(Plane.ATHWART).orElseThrow().degrees(), 1e-9);
        assertEquals(0, new Disc(0.1, 1).lastAxialMaximum());
    }

    /** Power on the axis over its mean in all directions ahead, by adding up: what the directivity index stands for. */
    @Test
    void exact_directivityIndexIsTheSumOverDirections() {
        Disc disc = new Disc(8, 1);
        int steps = 20000;
        double sum = 0;
        for (int i = 0; i < steps; i++) {
            double angle = Math.PI / 2 * (i + 0.5) / steps;
            double response = disc.response(NONE, Angle.ofRadians(angle));
            sum += response * response * Math.sin(angle) * Math.PI / 2 / steps;
        }
        assertEquals(disc.directivityIndex(), 10 * Math.log10(2 / sum), 0.05);
    }

    @Test
    void exact_elementOfABeamAsTold() {
        Element round = Element.of(new SoundBeam(50e3, Angle.ofDegrees(24), Angle.ofDegrees(24)), 1500);
        assertEquals(Disc.ofHalfPowerWidth(Angle.ofDegrees(24), 0.03), round);
        Element fan = Element.of(new SoundBeam(200e3, Angle.ofDegrees(8), Angle.ofDegrees(30)), 1500);
        assertEquals(8, fan.halfPowerWidth(Plane.FORE_AND_AFT).orElseThrow().degrees(), 1e-9);
        assertEquals(30, fan.halfPowerWidth(Plane.ATHWART).orElseThrow().degrees(), 1e-9);
    }

    @Test
    void refusesBeamsOfNoWidth() {
        assertEquals("a beam width of 0.0 deg; it must be more than 0 and less than 180 deg",
            assertThrows(IllegalArgumentException.class, () -> Disc.ofHalfPowerWidth(NONE, 0.01)).getMessage());
    }

    /** To which side a beam looks off changes nothing; which of its sides is which does. */
    @Test
    void law_sidesAndAxes() {
        Angle ten = Angle.ofDegrees(10);
        Angle four = Angle.ofDegrees(4);
        Rectangle rectangle = new Rectangle(0.10, 0.05, 0.0075);
        for (Element element : List.of(rectangle, new Disc(0.08, 0.0075))) {
            double response = element.response(ten, four);
            assertEquals(response, element.response(Angle.ofDegrees(-10), four), 1e-15);
            assertEquals(response, element.response(ten, Angle.ofDegrees(-4)), 1e-15);
        }
        assertEquals(rectangle.response(ten, four), new Rectangle(0.05, 0.10, 0.0075).response(four, ten), 1e-15);
        assertTrue(Math.abs(rectangle.response(ten, four) - rectangle.response(four, ten)) > 0.05);
    }
}
