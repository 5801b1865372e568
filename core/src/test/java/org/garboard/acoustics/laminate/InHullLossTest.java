package org.garboard.acoustics.laminate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

class InHullLossTest {
    private static final Fluid SEA = new Fluid(1026, 1507);
    private static final Solid GRP = TypicalSolids.GLASS_POLYESTER.lossless();

    /** A band of 10 mm +-10 % holds the three-quarter-wave plate of 200 kHz, 9.9375 mm: the least that gets through. */
    @Test
    void exact_worstIsTheOddQuarterWaveInTheBand() {
        double r = GRP.impedance() / SEA.impedance();
        InHullLoss loss = InHullLoss.through(GRP, 0.010, SEA, Angle.ofDegrees(0), 200e3).get(0);
        assertEquals(20 * Math.log10((r + 1 / r) / 2), loss.worst(), 1e-9);
        assertEquals(3 * 2650 / (4 * 200e3), loss.worstThickness(), 1e-7);
        assertEquals(2 * loss.worst(), loss.worstTwoWay());
    }

    /** Thin plates lose more the thicker they are; then the worst stands at the end of the band. */
    @Test
    void exact_worstAtTheEndOfTheBand() {
        InHullLoss loss = InHullLoss.through(GRP, 0.005, SEA, Angle.ofDegrees(0), 50e3).get(0);
        assertEquals(0.0055, loss.worstThickness(), 1e-9);
        assertEquals(-10 * Math.log10(NormalPlate.transmission(SEA, GRP, SEA, 0.0055, 50e3)), loss.worst(), 1e-9);
    }

    @Test
    void law_noThicknessInTheBandLosesMore() {
        for (double degrees : new double[] {0, 12, 20, 24, 30}) {
            for (InHullLoss loss : InHullLoss.through(TypicalSolids.GLASS_POLYESTER, 0.012, SEA, Angle.ofDegrees(degrees), 50e3, 83e3, 200e3)) {
                for (int i = -1000; i <= 1000; i++) {
                    double thickness = 0.012 * (1 + 0.1 * i / 1000);
                    double here = new ElasticPlate(TypicalSolids.GLASS_POLYESTER, thickness)
                        .passage(SEA, SEA, loss.frequency(), Angle.ofDegrees(degrees)).lossDecibels();
                    assertTrue(here <= loss.worst() + 1e-9, here + " dB at " + thickness + " m, worst " + loss);
                }
                assertTrue(loss.asTold() <= loss.worst());
            }
        }
    }

    @Test
    void theLargestOfAllFrequenciesGoverns() {
        List<InHullLoss> losses = InHullLoss.through(GRP, 0.010, SEA, Angle.ofDegrees(20), 50e3, 200e3);
        assertEquals(50e3, losses.get(0).frequency());
        double largest = Math.max(losses.get(0).worst(), losses.get(1).worst());
        assertEquals(largest, InHullLoss.governing(losses).worst());
    }
}
