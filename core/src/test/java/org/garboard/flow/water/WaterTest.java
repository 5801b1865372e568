package org.garboard.flow.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Each value as its source prints it. Where we hold only texts that quote the source, the test says so. */
class WaterTest {

    /** Check values of UNESCO Technical Paper 44, 1983, as many texts quote them. */
    @ParameterizedTest
    @CsvSource({"5, 0, 999.96675", "5, 35, 1027.67547", "25, 35, 1023.34306", "25, 0, 997.04796"})
    void published_densityOfTheEquationOfState(double t, double s, double density) {
        assertEquals(density, new Water(t, s).density(), 1e-5);
    }

    /** ITTC 7.5-02-01-03, sea water, as other texts quote it. */
    @ParameterizedTest
    @CsvSource({"1, 1028.0941", "4, 1027.8336", "10, 1027.0000", "15, 1026.0210", "19.2, 1025.0187", "20, 1024.8103", "25, 1023.3873", "30, 1021.7694"})
    void published_densityOfStandardSeaWater(double t, double density) {
        assertEquals(density, Water.sea(t).density(), 0.01);
    }

    /** ITTC 7.5-02-01-03 at 15 degrees and its table of 2008, as other texts quote them; they differ among themselves in the fourth digit. */
    @ParameterizedTest
    @CsvSource({"15, 0, 1.1386e-6", "18.5, 0, 1.0411e-6", "15, 35.0623, 1.1892e-6", "15, 35.0623, 1.18831e-6", "19.2, 35.0623, 1.0711e-6"})
    void published_viscosity(double t, double s, double viscosity) {
        assertEquals(viscosity, new Water(t, s).viscosity(), 1e-3 * viscosity);
    }

    @ParameterizedTest
    @CsvSource({"15, 999.1026", "18.5, 998.5048"})
    void published_densityOfFreshWater(double t, double density) {
        assertEquals(density, Water.fresh(t).density(), 0.01);
    }

    /** 1705.1 Pa as towing tanks quote it: another formula, 0.04 % away. */
    @Test
    void published_vapourPressureAtFifteenDegrees() {
        assertEquals(1705.1, Water.fresh(15).vapourPressure(), 0.001 * 1705.1);
    }

    /** Triple point and boiling point, from memory: 611.657 Pa and 101 418 Pa. */
    @Test
    void fromMemory_vapourPressureAtTheTripleAndBoilingPoints() {
        assertEquals(611.657, VapourPressure.pure(273.16), 0.001);
        assertEquals(101_418, VapourPressure.pure(373.15), 0.5);
    }

    /** Independent computation of the same formulas; the sea's value has 35.16504 g/kg, the salt by weight at practical salinity 35. */
    @Test
    void independent_vapourPressureOfFreshAndSeaWater() {
        assertEquals(1705.68, Water.fresh(15).vapourPressure(), 0.005);
        assertEquals(1670.75, new Water(15, 35.16504).vapourPressure(), 0.005);
    }

    /** Fofonoff and Millard 1983, as other texts quote them. */
    @ParameterizedTest
    @CsvSource({"40, 40, 1000, 1731.995, 5e-4", "0, 35, 0, 1449.14, 5e-3"})
    void published_soundSpeedOfChenAndMillero(double t, double s, double bar, double speed, double digit) {
        assertEquals(speed, SoundSpeed.chenMillero(t, s, bar), digit);
    }

    /** Mackenzie 1981 at 25, 35, 1000 m, as other texts quote it. */
    @ParameterizedTest
    @CsvSource({"25, 35, 1000, 1550.744, 5e-4", "24.1, 36.5, 0, 1533.76, 5e-3", "13.5, 38.7, 400, 1512.85, 5e-3"})
    void published_soundSpeedOfMackenzie(double t, double s, double depth, double speed, double digit) {
        assertEquals(speed, SoundSpeed.mackenzie(t, s, depth), digit);
    }

    /** Independent computation: fresh water at 20 degrees, and both formulas in one sea. */
    @Test
    void independent_soundSpeeds() {
        assertEquals(1482.343, Water.fresh(20).soundSpeed(), 1e-3);
        assertEquals(1506.663, new Water(15, 35).soundSpeed(), 1e-3);
        assertEquals(1506.692, SoundSpeed.mackenzie(15, 35, 0), 1e-3);
    }

    @Test
    void law_saltMakesWaterDenserTougherAndFasterForSound() {
        for (double t = 0; t <= 40; t += 2.5) {
            Water fresh = Water.fresh(t);
            Water sea = Water.sea(t);
            assertTrue(sea.density() > fresh.density());
            assertTrue(sea.dynamicViscosity() > fresh.dynamicViscosity());
            assertTrue(sea.soundSpeed() > fresh.soundSpeed());
            assertTrue(sea.vapourPressure() < fresh.vapourPressure());
        }
    }

    @Test
    void outsideTheRangesThereIsNoWater() {
        assertEquals("water: temperature is 40.500 degrees Celsius; it must be from 0 to 40 degrees Celsius",
            assertThrows(IllegalArgumentException.class, () -> Water.fresh(40.5)).getMessage());
        assertEquals("water: salinity is -1.000 g/kg; it must be from 0 to 42 g/kg",
            assertThrows(IllegalArgumentException.class, () -> new Water(20, -1)).getMessage());
        assertEquals("nine-term equation of sound speed: 20.0 degrees Celsius, salinity 0.0, depth 0.0 m; it holds from 2 to "
            + "30 degrees, salinity 25 to 40, 0 to 8000 m",
            assertThrows(IllegalArgumentException.class, () -> SoundSpeed.mackenzie(20, 0, 0)).getMessage());
    }

    /** Temperature in kelvin, salt as a share, depth for pressure: none is taken in silence. */
    @Test
    void otherUnitsAreNotTakenForTheirs() {
        assertThrows(IllegalArgumentException.class, () -> Water.sea(288.15));
        assertEquals("sound speed after Chen and Millero: 288.15 degrees Celsius, salinity 35.0, 0.0 bar; it holds from 0 to 40 degrees, salinity 0 to 42, "
            + "0 to 1000 bar", assertThrows(IllegalArgumentException.class, () -> SoundSpeed.chenMillero(288.15, 35, 0)).getMessage());
        assertThrows(IllegalArgumentException.class, () -> SoundSpeed.chenMillero(15, 35, 101_325));
        assertThrows(IllegalArgumentException.class, () -> SoundSpeed.mackenzie(15, 0.035, 0));
        assertThrows(IllegalArgumentException.class, () -> SoundSpeed.mackenzie(288.15, 35, 0));
        assertThrows(IllegalArgumentException.class, () -> SoundSpeed.mackenzie(15, 35, -10));
    }

    /** Both ends of every range belong to it. */
    @Test
    void theRangesHoldTheirEnds() {
        assertEquals(SoundSpeed.mackenzie(2.001, 25.001, 0.1), SoundSpeed.mackenzie(2, 25, 0), 0.1);
        assertEquals(SoundSpeed.mackenzie(29.999, 39.999, 7999.9), SoundSpeed.mackenzie(30, 40, 8000), 0.1);
        assertEquals(SoundSpeed.chenMillero(39.999, 41.999, 999.9), SoundSpeed.chenMillero(40, 42, 1000), 0.1);
        assertEquals(Water.fresh(0.001).soundSpeed(), Water.fresh(0).soundSpeed(), 0.1);
    }
}
