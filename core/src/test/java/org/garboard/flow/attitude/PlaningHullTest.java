package org.garboard.flow.attitude;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import org.garboard.flow.planing.Loading;
import org.garboard.flow.planing.Prism;
import org.garboard.flow.planing.PrismBalance;
import org.garboard.flow.planing.PrismRun;
import org.garboard.flow.planing.Stream;
import org.garboard.flow.water.Water;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.offsets.LineKind;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

class PlaningHullTest {
    private static final double RISE = Math.tan(Math.toRadians(19));
    private static final Loading LOADING = new Loading(22_000, 2.3, 0.75, 0.95, Angle.ofDegrees(0));

    /** A prismatic hull whose keel has a slope to the base line. */
    private static Hull prism(double slope) {
        return Hull.through(new Forms(0, 0, 2, 4, 6, 8).keel(x -> slope * (8 - x))
            .named(LineKind.CHINE, "Chine", x -> 1.05, x -> slope * (8 - x) + 1.05 * RISE)
            .named(LineKind.SHEER, "Sheer", x -> 1.1, x -> 2).table());
    }

    private static Stream stream(double speed) {
        return Stream.of(Water.sea(15), speed);
    }

    /** On a true prism the line laid by each section's immersion is the paper's own, straight from keel to chine. */
    @Test
    void exact_onAPrismTheLineIsThePapers() {
        for (double speed = 10; speed <= 16; speed += 2) {
            PrismBalance balance = PrismBalance.of(new Prism(2.1, Angle.ofDegrees(19)), stream(speed), LOADING);
            PrismRun run = balance.at(balance.trim());
            Planing.Running found = assertInstanceOf(Planing.Running.class, new PlaningHull(prism(0)).balanced(stream(speed), LOADING));
            assertEquals(run.trim().degrees(), found.trim().degrees(), 1e-6);
            for (double y = 0; y <= 1.05; y += 0.07) {
                double forward = run.stagnationAt(y) ;
                assertEquals(8 - forward, found.line().x(y), 1e-5, "speed " + speed + ", y " + y);
                assertEquals(found.line().x(y), found.line().x(-y), 0);
            }
        }
    }

    /** A keel that rises forward by a degree takes a degree from the base line's trim and leaves the keel's. */
    @Test
    void law_theBaseLinesSlopeDoesNotMatter() {
        double slope = Math.tan(Math.toRadians(1));
        Planing.Running level = assertInstanceOf(Planing.Running.class, new PlaningHull(prism(0)).balanced(stream(12), LOADING));
        Planing.Running risen = assertInstanceOf(Planing.Running.class, new PlaningHull(prism(slope)).balanced(stream(12), LOADING));
        assertEquals(level.trim().degrees() - 1, risen.trim().degrees(), 1e-6);
        assertEquals(level.line().atKeel(), risen.line().atKeel(), 5e-3);
    }

    @Test
    void outsideTheMethodThereIsNoNumber() {
        assertEquals("speed coefficient 0.66 is below 1, where the planing method begins",
            assertInstanceOf(Planing.NotKnown.class, new PlaningHull(prism(0)).balanced(stream(3), LOADING)).reason());
        Hull round = Hull.through(new Forms(0, 0, 4, 8).keel(x -> 0).named(LineKind.SHEER, "Sheer", x -> 1, x -> 1).table());
        assertEquals("no chine: the planing method is for bottoms that end at chines",
            assertInstanceOf(Planing.NotKnown.class, new PlaningHull(round).balanced(stream(12), LOADING)).reason());
    }
}
