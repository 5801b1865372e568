package org.garboard.flow.attitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.Optional;
import org.garboard.flow.attitude.Flotation.Afloat;
import org.garboard.flow.attitude.Flotation.Sinks;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.offsets.LineKind;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

class FlotationTest {
    /** A V of 45 degrees, 10 m long, to 2 m half-breadth. */
    private static final Hull V = Hull.through(new Forms(0, 0, 2.5, 5, 7.5, 10).keel(x -> 0)
        .named(LineKind.SHEER, "Sheer", x -> 2, x -> 2).table());

    private static Load load(double mass, double x, double z) {
        return new Load(mass, x, z, 0, Angle.ofDegrees(0));
    }

    private static Afloat afloat(Hull hull, Load load) {
        Flotation.Answer answer = new Flotation(hull, Optional.empty(), 1000).atRest(load);
        return assertInstanceOf(Afloat.class, answer, answer.toString());
    }

    /** A wedge of depth d displaces d^2 L. */
    @Test
    void exact_evenKeel() {
        Afloat found = afloat(V, load(4900, 5, 1));
        assertEquals(0.7, found.hull().water().at(5), 1e-9);
        assertEquals(0, found.trim().degrees(), 1e-7);
        assertEquals(4900, found.whole().mass(1000), 1e-5);
    }

    /** Trimmed, the centre of buoyancy is plumb below the centre of gravity. */
    @Test
    void law_massAndMomentClose() {
        Hull bow = PlaningHullTest.warped(1);
        for (double x = 5.6; x <= 6.8; x += 0.3) {
            Load load = load(4200, x, 0.8);
            Afloat found = afloat(bow, load);
            double slope = Math.tan(found.trim().radians());
            assertEquals(4200, found.whole().mass(1000), 1e-6 * 4200);
            assertEquals(0, x - found.whole().lcb() + slope * (0.8 - found.whole().vcb()), 1e-6);
        }
    }

    /** The farther aft the centre of gravity, the more bow up; the more mass, the deeper. */
    @Test
    void law_order() {
        Hull bow = PlaningHullTest.warped(1);
        assertEquals(true, afloat(bow, load(4200, 6.5, 0.8)).trim().degrees() > afloat(bow, load(4200, 6, 0.8)).trim().degrees());
        assertEquals(true, afloat(bow, load(4800, 6, 0.8)).hull().water().at(6) > afloat(bow, load(4200, 6, 0.8)).hull().water().at(6));
    }

    @Test
    void badInputIsNamed() {
        Flotation flotation = new Flotation(V, Optional.empty(), 1000);
        assertEquals("mass 50000 kg: at a trim of 0.00 deg she floats with at most 40000 kg before the water comes over her sheer",
            assertInstanceOf(Sinks.class, flotation.atRest(load(50_000, 5, 1))).reason());
        assertEquals("centre of gravity at x = 9.900 m, 1.000 m above base: with 4900 kg there she floats at no trim within 15 deg",
            assertInstanceOf(Sinks.class, flotation.atRest(load(4900, 9.9, 1))).reason());
        assertEquals(Optional.of("centre of gravity at x = 10.500 m is outside the boat; it must be from 0.000 to 10.000 m"),
            load(4900, 10.5, 1).outside(V));
        assertEquals(Optional.of("centre of gravity 2.100 m above base is outside the boat; it must be from 0.000 m (keel) to 2.000 m (sheer)"),
            load(4900, 5, 2.1).outside(V));
    }
}
