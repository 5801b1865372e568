package org.garboard.flow.layer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.garboard.flow.layer.LayerLaw.Known;
import org.garboard.flow.layer.LayerLaw.Outside;
import org.garboard.flow.layer.LayerLaw.Start;
import org.garboard.flow.water.Water;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class LayerTest {
    private static final Water SEA = Water.sea(15);

    private static Layer full(LayerLaw law, double run, double speed) {
        return assertInstanceOf(Known.class, law.after(run, speed, SEA)).layer();
    }

    /** A layer of the run 1 m at such a Reynolds number. */
    private static Layer unit(double reynolds) {
        return full(LayerLaw.USUAL, 1, reynolds * SEA.viscosity());
    }

    /** White, Fluid Mechanics, Example 7.1, from memory: water at 20 ft/s and 68 F, 1 in thick at 5.17 ft. nu 1.082e-5 ft2/s. */
    @Test
    void fromMemory_whitesExampleOfOneInch() {
        double nu = 1.082e-5;
        assertEquals(1 / 12.0, 5.17 * SeventhPower.thickness(20 * 5.17 / nu), 0.001 / 12 * 2);
    }

    /** White, Fluid Mechanics, Example 7.4, from memory: hydrofoil of 1.2 ft at 40 ft/s, nu 1.1e-5: 0.0216 ft, C_D .00349, 80 lbf (span 6 ft, rho 1.99). */
    @Test
    void fromMemory_whitesHydrofoil() {
        double reynolds = 1.2 * 40 / 1.1e-5;
        assertEquals(4.36e6, reynolds, 0.005e6);
        assertEquals(.0216, 1.2 * SeventhPower.thickness(reynolds), 5e-5);
        assertEquals(.00349, SeventhPower.drag(reynolds), 5e-6);
        assertEquals(80, 2 * SeventhPower.drag(reynolds) * 0.5 * 1.99 * 40 * 40 * 6 * 1.2, 0.5);
    }

    /**
     * Independent computation: Coles' law integrated elsewhere, from a start a few thousand of Re late, which shows
     * at 1e7 as 3e-4 of the thickness; ours is held to its closed form in exact_runOfASmoothLayer.
     */
    @ParameterizedTest
    @CsvSource({"1e7, .016000, .015266, .013858, .001917, .001489", "3e7, .013676, .013701, .012356, .001594, .001265",
        "1e8, .011515, .012288, .011001, .001322, .001069", "5e8, .009150, .010769, .009548, .001051, .000869"})
    void independent_bothLaws(double reynolds, double quick, double delta, double delta99, double displacement, double momentum) {
        assertEquals(quick, SeventhPower.thickness(reynolds), 5e-7);
        Layer layer = unit(reynolds);
        assertEquals(delta, layer.thickness(), 5e-6);
        assertEquals(delta99, layer.thickness99(), 1.5e-5);
        assertEquals(displacement, layer.displacement(), 1e-6);
        assertEquals(momentum, layer.momentum(), 1e-6);
    }

    /** Momentum: theta is half the mean friction times the run. Coles is 1.5 to 4 % above Schoenherr. */
    @ParameterizedTest
    @CsvSource({"1e7", "3e7", "1e8", "5e8"})
    void law_momentumThicknessFollowsSchoenherr(double reynolds) {
        double share = unit(reynolds).momentum() / (0.5 * FrictionLine.SCHOENHERR.mean(reynolds));
        assertTrue(share > 1.01 && share < 1.045, "share " + share);
    }

    /** The closed form of the run of a smooth layer: an exponential times a polynomial. */
    @Test
    void exact_runOfASmoothLayer() {
        double k = WallWake.K;
        double c = 2 + 3.179 * WallWake.PI + 1.5 * WallWake.PI * WallWake.PI;
        for (double s = 18; s <= 34; s += 2) {
            double closed = primitive(s, k, c) - primitive(c / (k * (1 + WallWake.PI)), k, c);
            assertEquals(closed, WallWake.turbulent(0).run(s), 1e-10 * closed);
        }
    }

    private static double primitive(double s, double k, double c) {
        double alpha = 1 + WallWake.PI;
        double beta = -c / k;
        double gamma = c / (k * k);
        double e = Math.exp(k * (s - WallWake.B) - 2 * WallWake.PI);
        return e * (alpha / k * s * s + (beta / k - 2 * alpha / (k * k)) * s
            + gamma / k - beta / (k * k) + 2 * alpha / (k * k * k));
    }

    /** The momentum equation of a flat plate, by differences: dtheta/dx = c_f/2, smooth, rough, and after a laminar start. */
    @Test
    void law_momentumGrowsWithTheWallsFriction() {
        for (LayerLaw law : new LayerLaw[] {LayerLaw.USUAL, new LayerLaw(Start.TURBULENT, 1e-4), new LayerLaw(Start.LAMINAR, 5e-5)}) {
            double h = 1e-4;
            double slope = (full(law, 4 + h, 12).momentum() - full(law, 4 - h, 12).momentum()) / (2 * h);
            assertEquals(0.5 * full(law, 4, 12).friction(), slope, 2e-6 * slope + 1e-9);
        }
    }

    /** Displacement thickness is the integral of what the profile lacks (the sublayer aside). */
    @Test
    void law_displacementIsWhatTheProfileLacks() {
        Layer layer = unit(1e8);
        double sum = 0;
        int n = 200_000;
        for (int i = 0; i < n; i++) {
            sum += (1 - layer.profile().velocity((i + 0.5) / n)) / n;
        }
        assertEquals(layer.displacement(), sum * layer.thickness(), 2e-3 * layer.displacement());
    }

    @Test
    void law_roughSkinsThickenAndLaminarStartsThin() {
        double smooth = full(LayerLaw.USUAL, 5, 12).thickness();
        assertTrue(full(new LayerLaw(Start.TURBULENT, 1e-4), 5, 12).thickness() > 1.05 * smooth);
        assertTrue(full(new LayerLaw(Start.LAMINAR, 0), 5, 12).thickness() < smooth);
        assertEquals(full(LayerLaw.USUAL, 5, 12).thickness(), full(new LayerLaw(Start.TURBULENT, 1e-12), 5, 12).thickness(), 1e-8);
    }

    /** At the edge the outer flow, at the wall none, and back from a velocity to its height. */
    @Test
    void law_thereAndBackThroughTheProfile() {
        Layer layer = unit(7e7);
        for (double part = 0.3; part < 0.999; part += 0.05) {
            assertEquals(part * layer.speed(), layer.velocityAt(layer.heightOf(part)), 1e-9 * layer.speed());
        }
        assertEquals(layer.speed(), layer.velocityAt(layer.thickness()), 1e-12);
        assertEquals(0, layer.velocityAt(0), 1e-12);
    }

    /** The 1/7 profile reaches 0.9 at 0.9^7 = 0.478 of the thickness. */
    @Test
    void exact_clearHeightOfTheQuickLaw() {
        Layer layer = assertInstanceOf(Known.class, LayerLaw.quick(5, 12.86, SEA)).layer();
        assertEquals(Math.pow(0.9, 7) * layer.thickness(), layer.clearHeight(), 1e-12);
    }

    /** Independent computation: a boat at 25 knots. */
    @ParameterizedTest
    @CsvSource({"2, 28.7, 3.4", "3, 40.6, 4.7", "5, 62.9, 7.3", "8, 94.0, 10.8"})
    void independent_boatAtTwentyFiveKnots(double run, double quickMm, double displacementMm) {
        double speed = 25 * 1852 / 3600.0;
        assertEquals(quickMm, 1000 * assertInstanceOf(Known.class, LayerLaw.quick(run, speed, SEA)).layer().thickness(), 0.06);
        assertEquals(displacementMm, 1000 * full(LayerLaw.USUAL, run, speed).displacement(), 0.06);
    }

    @Test
    void outsideItsRangeALawGivesNoFigure() {
        assertEquals("Reynolds number of the run 0.008 million is outside 1e5 to 1e10",
            assertInstanceOf(Outside.class, LayerLaw.USUAL.after(0.01, 1, SEA)).reason());
        assertEquals("Reynolds number of the run 0.084 million is outside 1e6 to 1e9",
            assertInstanceOf(Outside.class, LayerLaw.quick(0.1, 1, SEA)).reason());
        assertInstanceOf(Outside.class, LayerLaw.USUAL.after(0, 10, SEA));
        assertInstanceOf(Outside.class, LayerLaw.USUAL.after(-1, 10, SEA));
        assertInstanceOf(Outside.class, LayerLaw.USUAL.after(Double.NaN, 10, SEA));
        assertEquals("roughness of the skin is 0.1 m; it must be from 0 to 0.005 m",
            assertThrows(IllegalArgumentException.class, () -> new LayerLaw(Start.TURBULENT, 0.1)).getMessage());
    }

    /** Run and speed are not to be taken for one another, but at one Reynolds number a layer of half the run is half as thick. */
    @Test
    void law_lengthsScaleAtOneReynoldsNumber() {
        Layer slow = assertInstanceOf(Known.class, LayerLaw.quick(10, 5, SEA)).layer();
        Layer fast = assertInstanceOf(Known.class, LayerLaw.quick(5, 10, SEA)).layer();
        assertEquals(slow.thickness99() / 10, fast.thickness99() / 5, 1e-12);
        assertEquals(slow.clearHeight() / 10, fast.clearHeight() / 5, 1e-12);
    }
}
