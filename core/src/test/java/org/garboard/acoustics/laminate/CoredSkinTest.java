package org.garboard.acoustics.laminate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Core between two skins; the figures come from an independent computation, no publication stands behind them. */
class CoredSkinTest {
    private static final Fluid SEA = new Fluid(1026, 1507);
    private static final Solid GRP = TypicalSolids.GLASS_POLYESTER.lossless();

    @ParameterizedTest
    @CsvSource({"50, -22", "200, -34"})
    void independent_foamByImpedanceAlone(double kHz, double decibels) {
        assertEquals(decibels, decibels(LayeredSkin.cored(GRP, 0.003, TypicalSolids.PVC_FOAM.lossless(), 0.020), kHz), 0.5);
    }

    @ParameterizedTest
    @CsvSource({"50, -7.4, .05", "200, -.5, .05"})
    void independent_balsaWithoutLoss(double kHz, double decibels, double within) {
        assertEquals(decibels, decibels(LayeredSkin.cored(GRP, 0.003, TypicalSolids.BALSA.lossless(), 0.020), kHz), within);
    }

    @ParameterizedTest
    @CsvSource({"50, -17", "200, -56"})
    void independent_balsaWithLoss(double kHz, double decibels) {
        assertEquals(decibels, decibels(LayeredSkin.cored(GRP, 0.003, TypicalSolids.BALSA, 0.020), kHz), 0.5);
    }

    /** Air of 1.2 kg/m3 and 343 m/s (its shear speed is of no account at normal incidence). */
    @ParameterizedTest
    @CsvSource({"1, -63.5", "0.01, -24.7"})
    void independent_airInTheBond(double mm, double decibels) {
        Solid air = new Solid("air", 1.2, 343, 1, 0);
        assertEquals(decibels, decibels(new LayeredSkin(List.of(new Layer(air, mm / 1000))), 50), 0.5);
    }

    @Test
    void law_theOrderOfLayersDoesNotMatterBetweenTheSameLiquids() {
        Layer skin = new Layer(TypicalSolids.GLASS_POLYESTER, 0.004);
        Layer core = new Layer(TypicalSolids.BALSA, 0.015);
        assertEquals(new LayeredSkin(List.of(skin, core)).transmission(SEA, SEA, 83e3),
            new LayeredSkin(List.of(core, skin)).transmission(SEA, SEA, 83e3), 1e-12);
        assertTrue(new LayeredSkin(List.of(skin)).transmission(SEA, SEA, 83e3) > 0);
    }

    private static double decibels(LayeredSkin skin, double kHz) {
        return 10 * Math.log10(skin.transmission(SEA, SEA, kHz * 1000));
    }
}
