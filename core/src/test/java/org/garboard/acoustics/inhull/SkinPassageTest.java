package org.garboard.acoustics.inhull;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.garboard.acoustics.beam.Disc;
import org.garboard.acoustics.beam.Element;
import org.garboard.acoustics.laminate.ElasticPlate;
import org.garboard.acoustics.laminate.Fluid;
import org.garboard.acoustics.laminate.NormalPlate;
import org.garboard.acoustics.laminate.Solid;
import org.garboard.acoustics.laminate.TypicalSolids;
import org.garboard.craft.SoundBeam;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

class SkinPassageTest {
    private static final Fluid SEA = new Fluid(1026, 1507);
    private static final Solid GLASS = TypicalSolids.GLASS_POLYESTER.lossless();

    private static Element narrow(double frequency) {
        return new Disc(40, SEA.speed() / frequency);
    }

    /** A beam of hundredths of a degree, square to the skin, is the plane wave of the closed form, at its worst thickness. */
    @Test
    void exact_aNarrowBeamSquareToTheSkin() {
        for (double frequency : new double[] {50e3, 200e3}) {
            SkinPassage.Worst worst = SkinPassage.of(GLASS, 0.010, 0.010, SEA, frequency).of(narrow(frequency), Angle.ofDegrees(0));
            assertEquals(-10 * Math.log10(NormalPlate.transmission(SEA, GLASS, SEA, worst.thickness(), frequency)), worst.loss(), 2e-3);
            double least = Double.POSITIVE_INFINITY;
            for (double d = 0.009; d <= 0.011; d += 1e-6) {
                least = Math.min(least, NormalPlate.transmission(SEA, GLASS, SEA, d, frequency));
            }
            assertEquals(-10 * Math.log10(least), worst.loss(), 5e-3, "worst of the thicknesses");
        }
    }

    /** At an angle between two of its samples, a narrow beam comes within a hundredth of the plane wave there. */
    @Test
    void exact_aNarrowBeamAskew() {
        SkinPassage.Worst worst = SkinPassage.of(GLASS, 0.010, 0.010, SEA, 50e3).of(narrow(50e3), Angle.ofDegrees(15));
        assertEquals(new ElasticPlate(GLASS, worst.thickness()).passage(SEA, SEA, 50e3, Angle.ofDegrees(15)).lossDecibels(), worst.loss(), 0.02);
    }

    /** A plane wave at 26 to 30 deg falls into a dip of some 20 dB at 200 kHz and 6 mm; a beam of 12 deg never does. */
    @Test
    void law_aBeamLevelsDips() {
        Angle steep = Angle.ofDegrees(29);
        Element real = Element.of(new SoundBeam(200e3, Angle.ofDegrees(12), Angle.ofDegrees(12)), SEA.speed());
        SkinPassage passage = SkinPassage.of(GLASS, 0.006, 0.006, SEA, 200e3);
        assertTrue(passage.of(narrow(200e3), steep).loss() > passage.of(real, steep).loss() + 3);
    }

    @Test
    void law_theTableAgreesWithItsAngles() {
        Element real = Element.of(new SoundBeam(50e3, Angle.ofDegrees(20), Angle.ofDegrees(20)), SEA.speed());
        SkinPassage passage = SkinPassage.of(TypicalSolids.GLASS_POLYESTER, 0.010, 0.012, SEA, 50e3);
        LossByIncidence table = passage.by(real);
        for (double degrees : new double[] {0, 7, 18, 30}) {
            assertEquals(passage.of(real, Angle.ofDegrees(degrees)).loss(), table.at(Math.toRadians(degrees)), 1e-9);
            assertEquals(table.at(Math.toRadians(degrees)), table.at(-Math.toRadians(degrees)));
        }
        assertEquals(Double.POSITIVE_INFINITY, table.at(Math.toRadians(61)));
    }

    @Test
    void law_aWiderRangeOfThicknessIsNeverBetter() {
        Element real = Element.of(new SoundBeam(200e3, Angle.ofDegrees(12), Angle.ofDegrees(12)), SEA.speed());
        Angle v = Angle.ofDegrees(18);
        double narrow = SkinPassage.of(GLASS, 0.010, 0.010, SEA, 200e3).of(real, v).loss();
        assertTrue(SkinPassage.of(GLASS, 0.005, 0.015, SEA, 200e3).of(real, v).loss() >= narrow - 0.01);
    }
}
