package org.garboard.flow.layer;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.garboard.flow.water.Water;
import org.junit.jupiter.api.Test;

/** Laminar layers, rough skins and the ends of each law's range. */
class LayerEdgesTest {
    private static final Water SEA = Water.sea(15);
    private static final LayerLaw CLEAN = new LayerLaw(LayerLaw.Start.LAMINAR, 0);

    /** A run at 10 m/s whose Reynolds number is told [m]. */
    private static double run(double reynolds) {
        return reynolds * SEA.viscosity() / 10;
    }

    private static Layer layer(LayerLaw.Answer answer) {
        return assertInstanceOf(LayerLaw.Known.class, answer).layer();
    }

    /** Blasius' plate, any textbook: local friction 0.664, displacement 1.7208, momentum 0.664 over the root of Re. */
    @Test
    void published_laminarPlate() {
        double reynolds = 2e5;
        Layer layer = layer(CLEAN.after(run(reynolds), 10, SEA));
        double root = Math.sqrt(reynolds);
        assertEquals(1.7208, layer.displacement() / layer.run() * root, 1e-3);
        assertEquals(0.664, layer.momentum() / layer.run() * root, 1e-3);
        assertEquals(0.664, layer.friction() * root, 1e-3);
        assertEquals(5, layer.thickness() / layer.run() * root, 0.1);
        assertEquals(10, layer.velocityAt(layer.thickness()), 1e-12);
        assertEquals(0, layer.velocityAt(0), 1e-12);
        for (double part : new double[] {0.1, 0.5, 0.9, 0.99}) {
            assertEquals(10 * part, layer.velocityAt(layer.heightOf(part)), 1e-9);
        }
        assertTrue(layer.velocityAt(0.3 * layer.thickness()) > 10 * 0.3, "fuller than a straight line");
    }

    /** Up to the transition it is laminar, beyond it turbulent and thicker. */
    @Test
    void law_transition() {
        Layer before = layer(CLEAN.after(run(LayerLaw.TRANSITION), 10, SEA));
        Layer behind = layer(CLEAN.after(run(1.05 * LayerLaw.TRANSITION), 10, SEA));
        assertInstanceOf(LaminarProfile.class, before.profile());
        assertInstanceOf(WallWake.Profile.class, behind.profile());
        assertTrue(behind.friction() > 2 * before.friction());
        assertTrue(behind.momentum() < layer(LayerLaw.USUAL.after(run(1.05 * LayerLaw.TRANSITION), 10, SEA)).momentum());
    }

    /** A rough skin thickens the layer, slows the water near it, and the fuller speed at its edge stays that of the outer flow. */
    @Test
    void law_roughness() {
        Layer smooth = layer(LayerLaw.USUAL.after(5, 10, SEA));
        Layer rough = layer(new LayerLaw(LayerLaw.Start.TURBULENT, 150e-6).after(5, 10, SEA));
        assertTrue(rough.friction() > 1.1 * smooth.friction());
        assertTrue(rough.velocityAt(0.002) < smooth.velocityAt(0.002));
        assertEquals(10, rough.velocityAt(rough.thickness() * (1 - 1e-9)), 1e-3);
        assertEquals(10, smooth.velocityAt(smooth.thickness() * (1 - 1e-9)), 1e-3);
        // within the sublayer the stress is the wall's: u = tau y / mu
        double wall = 0.5 * smooth.friction() * 100 / SEA.viscosity();
        assertEquals(wall * 1e-6, smooth.velocityAt(1e-6), 1e-9 * wall);
    }

    /** From memory: 0.027 Re^-1/7; half-way up the water has 0.9057 of its speed. */
    @Test
    void exact_seventhPower() {
        Layer layer = layer(LayerLaw.quick(run(1e7), 10, SEA));
        assertEquals(0.027 * Math.pow(1e7, -1 / 7.0), layer.friction(), 1e-12);
        assertEquals(layer.thickness() / 8, layer.displacement(), 1e-15);
        assertEquals(7 * layer.thickness() / 72, layer.momentum(), 1e-15);
        assertEquals(10 * Math.pow(0.5, 1 / 7.0), layer.velocityAt(layer.thickness() / 2), 1e-12);
        assertEquals(10, layer.velocityAt(2 * layer.thickness()), 0);
        assertEquals(layer.thickness() / 2, layer.heightOf(Math.pow(0.5, 1 / 7.0)), 1e-12);
    }

    /** Each law to either side of its ends. */
    @Test
    void law_rangesEnd() {
        assertInstanceOf(LayerLaw.Known.class, LayerLaw.quick(run(1.001e6), 10, SEA));
        assertInstanceOf(LayerLaw.Outside.class, LayerLaw.quick(run(0.999e6), 10, SEA));
        assertInstanceOf(LayerLaw.Known.class, LayerLaw.quick(run(0.999e9), 10, SEA));
        assertInstanceOf(LayerLaw.Outside.class, LayerLaw.quick(run(1.001e9), 10, SEA));
        assertInstanceOf(LayerLaw.Known.class, LayerLaw.USUAL.after(run(1.001e5), 10, SEA));
        assertEquals(new LayerLaw.Outside("Reynolds number of the run 0.099 million is outside 1e5 to 1e10"), LayerLaw.USUAL.after(run(0.99e5), 10, SEA));
        assertInstanceOf(LayerLaw.Known.class, LayerLaw.USUAL.after(run(0.999e10), 10, SEA));
        assertInstanceOf(LayerLaw.Outside.class, LayerLaw.USUAL.after(run(1.001e10), 10, SEA));
    }
}
