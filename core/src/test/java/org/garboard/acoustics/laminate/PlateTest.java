package org.garboard.acoustics.laminate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.garboard.flow.water.Water;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * One plate. Values named {@code independent} were worked out apart from this program for sea water of
 * 1026 kg/m3 and 1507 m/s and a laminate of 1600 kg/m3, 2650 and 1500 m/s; no publication stands behind them.
 */
class PlateTest {
    private static final Fluid SEA = new Fluid(1026, 1507);
    private static final Solid GRP = TypicalSolids.GLASS_POLYESTER.lossless();
    private static final double Z1 = 1026 * 1507;
    private static final double Z2 = 1600 * 2650;

    @Test
    void exact_halfWavePlateLetsAllThrough() {
        assertEquals(1, NormalPlate.transmission(Z1, Z2, Z1, Math.PI), 1e-12);
        double halfWave = 2650 / (2 * 200e3);
        assertEquals(0.006625, halfWave, 1e-12);
        assertEquals(1, NormalPlate.transmission(SEA, GRP, SEA, halfWave, 200e3), 1e-12);
        assertEquals(1, new ElasticPlate(GRP, halfWave).passage(SEA, SEA, 200e3, Angle.ofDegrees(0)).transmitted(), 1e-12);
    }

    @Test
    void exact_quarterWavePlate() {
        assertEquals(1, NormalPlate.transmission(1.5e6, Math.sqrt(1.5e6 * 6e6), 6e6, Math.PI / 2), 1e-12);
        double r = Z2 / Z1;
        double expected = 4 / ((r + 1 / r) * (r + 1 / r));
        assertEquals(expected, NormalPlate.transmission(Z1, Z2, Z1, Math.PI / 2), 1e-12);
        assertEquals(0.414385, NormalPlate.transmission(Z1, Z2, Z1, Math.PI / 2), 5e-7);
        assertEquals(expected, new ElasticPlate(GRP, 2650 / (4 * 200e3)).passage(SEA, SEA, 200e3, Angle.ofDegrees(0)).transmitted(),
            1e-12);
    }

    @Test
    void exact_vanishingPlateLeavesTheTwoLiquids() {
        assertEquals(16.0 / 25, NormalPlate.transmission(1, 7, 4, 0), 1e-12);
        Fluid heavy = new Fluid(1026, 4 * 1507);
        assertEquals(16.0 / 25, new ElasticPlate(GRP, 1e-12).passage(SEA, heavy, 200e3, Angle.ofDegrees(0)).transmitted(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"50, 10, .4518, -3.45", "200, 6, .8924, -.49", "200, 10, .4146, -3.82", "200, 20, .9951, -.02"})
    void independent_laminateAtNormalIncidence(double kHz, double mm, double share, double decibels) {
        double transmitted = NormalPlate.transmission(SEA, GRP, SEA, mm / 1000, kHz * 1000);
        assertEquals(share, transmitted, 5e-5);
        assertEquals(decibels, 10 * Math.log10(transmitted), 5e-3);
    }

    @ParameterizedTest
    @CsvSource({"50, 10, .451752", "200, 10, .414598", "200, 6, .892424"})
    void exact_elasticPlateAtNormalIncidenceIsTheClosedForm(double kHz, double mm, double share) {
        double closed = NormalPlate.transmission(SEA, GRP, SEA, mm / 1000, kHz * 1000);
        assertEquals(share, closed, 5e-7);
        for (double angle : new double[] {0, 1e-6}) {
            assertEquals(closed, new ElasticPlate(GRP, mm / 1000).passage(SEA, SEA, kHz * 1000, Angle.ofDegrees(angle)).transmitted(),
                1e-9);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "50, 10, 5, -3.48", "50, 10, 10, -3.54", "50, 10, 15, -3.61", "50, 10, 20, -3.67", "50, 10, 25, -3.74", "50, 10, 30, -4.00",
        "200, 6, 5, -.41", "200, 6, 10, -.22", "200, 6, 15, -.05", "200, 6, 20, -.01", "200, 6, 25, -.75", "200, 6, 30, -20.74"})
    void independent_elasticPlateAtAnAngle(double kHz, double mm, double degrees, double decibels) {
        Passage passage = new ElasticPlate(GRP, mm / 1000).passage(SEA, SEA, kHz * 1000, Angle.ofDegrees(degrees));
        assertEquals(-decibels, passage.lossDecibels(), 5.001e-3);
    }

    @Test
    void law_nothingIsLostWithoutLossAtAnyAngle() {
        Fluid oil = new Fluid(870, 1430);
        for (double kHz : new double[] {28, 50, 83, 200}) {
            for (double mm : new double[] {2, 6, 10, 21.3}) {
                for (double degrees = 0; degrees < 90; degrees += 0.5) {
                    ElasticPlate plate = new ElasticPlate(GRP, mm / 1000);
                    for (Fluid behind : List.of(SEA, oil)) {
                        Passage passage = plate.passage(oil, behind, kHz * 1000, Angle.ofDegrees(degrees));
                        assertEquals(1, passage.transmitted() + passage.reflected(), 1e-9, kHz + " kHz, " + mm + " mm, " + degrees);
                    }
                }
            }
        }
    }

    @Test
    void law_asMuchGoesInAsOut() {
        Fluid oil = new Fluid(870, 1430);
        ElasticPlate plate = new ElasticPlate(TypicalSolids.GLASS_POLYESTER, 0.008);
        for (double degrees = 0; degrees <= 60; degrees += 5) {
            double out = Math.asin(Math.sin(Math.toRadians(degrees)) * SEA.speed() / oil.speed());
            assertEquals(plate.passage(oil, SEA, 120e3, Angle.ofDegrees(degrees)).transmitted(),
                plate.passage(SEA, oil, 120e3, Angle.ofRadians(out)).transmitted(), 1e-9);
        }
    }

    @Test
    void exact_nothingGoesIntoAFasterLiquidBeyondItsCriticalAngle() {
        Fluid fast = new Fluid(1026, 2000);
        double critical = Math.toDegrees(Math.asin(1507.0 / 2000));
        ElasticPlate plate = new ElasticPlate(GRP, 0.006);
        assertTrue(plate.passage(SEA, fast, 200e3, Angle.ofDegrees(critical - 1)).transmitted() > 0);
        Passage beyond = plate.passage(SEA, fast, 200e3, Angle.ofDegrees(critical + 1));
        assertEquals(0, beyond.transmitted());
        assertEquals(1, beyond.reflected(), 1e-9);
    }

    @Test
    void exact_criticalAngleOfCompressionWaves() {
        assertEquals(34.66, Math.toDegrees(Math.asin(SEA.speed() / GRP.longitudinal())), 5e-3);
    }

    /** With loss the layered skin and the elastic plate are two ways to one number. */
    @Test
    void exact_lossyPlateAtNormalIncidenceIsOneLayer() {
        for (double mm : new double[] {3, 10, 40}) {
            for (double kHz : new double[] {50, 200}) {
                double layered = new LayeredSkin(List.of(new Layer(TypicalSolids.GLASS_POLYESTER, mm / 1000)))
                    .transmission(SEA, SEA, kHz * 1000);
                Passage plate = new ElasticPlate(TypicalSolids.GLASS_POLYESTER, mm / 1000)
                    .passage(SEA, SEA, kHz * 1000, Angle.ofDegrees(0));
                assertEquals(layered, plate.transmitted(), 1e-9);
                assertTrue(plate.transmitted() + plate.reflected() < 1);
            }
        }
    }

    /** A layer matched to the liquid only takes what its attenuation says: 5 dB/cm/MHz, 2 cm, 0.2 MHz: 2 dB. */
    @Test
    void exact_attenuationOfAMatchedLayer() {
        Solid matched = new Solid("matched", 1026, 1507, 700, 5);
        double transmitted = new LayeredSkin(List.of(new Layer(matched, 0.02))).transmission(SEA, SEA, 200e3);
        assertEquals(-2, 10 * Math.log10(transmitted), 1e-3);
    }

    @Test
    void speedsOfRealWaterServe() {
        Fluid water = Fluid.of(Water.sea(15));
        assertEquals(1026.021, water.density(), 0.01);
        assertEquals(1506.7, water.speed(), 0.1);
    }

    @Test
    void refusesWhatNoSolidIs() {
        assertEquals("in gel shear waves run at 2400.0 m/s beside compression waves at 2500.0 m/s; no solid that resists squeezing"
            + " has them faster than 0.866 of that",
            assertThrows(IllegalArgumentException.class, () -> new Solid("gel", 1000, 2500, 2400, 1)).getMessage());
        assertEquals("thickness of a plate of glass laminate is 0.0 m; it must be more than 0",
            assertThrows(IllegalArgumentException.class, () -> new ElasticPlate(GRP, 0)).getMessage());
    }
}
