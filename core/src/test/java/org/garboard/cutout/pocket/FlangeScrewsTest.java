package org.garboard.cutout.pocket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.garboard.craft.Transducer;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.PocketOutcome;
import org.garboard.cutout.template.Template;
import org.garboard.cutout.template.Template.RoundHole;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.mount.pocket.Walls;
import org.garboard.mount.pocket.Walls.Rebate;
import org.garboard.mount.pocket.Walls.Screws;
import org.garboard.siting.Boats;
import org.garboard.solid.Loop;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Holes for a flange's screws lie on the middle of its ledge. */
class FlangeScrewsTest {
    private static PocketOutcome cut(double ledge, double hole, double apart) {
        Transducer body = new Transducer("test body", 0.3, 0.16, 0.06, 0.02, 0.02, Angle.ofDegrees(0));
        Rebate rebate = new Rebate(ledge, 0.02, Optional.of(new Screws(hole, apart)));
        PocketMake make = PocketMake.USUAL.with(new Walls(Angle.ofDegrees(5), 0.005, 0.003, Optional.of(rebate)));
        return KeelPocketCut.cut(Boats.prismaticV(0), body, new PocketWish(OptionalDouble.of(0.07), 0.0025, 0, make), BoatTold.NOTHING, 3, 0);
    }

    private static Template drilling(double ledge, double hole, double apart) {
        PocketOutcome outcome = cut(ledge, hole, apart);
        return assertInstanceOf(PocketOutcome.Built.class, outcome, outcome.toString()).pocket().templates().stream()
            .filter(template -> template.name().equals("flange-drilling")).findFirst().orElseThrow();
    }

    private static Loop loop(List<org.garboard.cutout.FlatPoint> line) {
        return Loop.of(line.stream().flatMapToDouble(point -> java.util.stream.DoubleStream.of(point.u(), point.v())).toArray());
    }

    /**
     * The ledge begins where a wall of 5 degrees has fallen from the floor 70 mm up to 30 mm (face 10, ledge 20 above it), from a
     * fillet's corner 5 tan(42.5 deg) outside the floor; all holes lie half a ledge outside that, as far apart as was asked or
     * less, and alike in all four quarters.
     */
    @Test
    void exact_holesOnTheMiddleOfTheLedge() {
        Template drilling = drilling(0.018, 0.005, 0.06);
        double out = 0.005 * Math.tan(Math.toRadians(42.5)) + 0.040 * Math.tan(Math.toRadians(5));
        Loop inner = loop(drilling.openings().get(0));
        double widest = drilling.openings().get(0).stream().mapToDouble(point -> point.v()).max().orElseThrow();
        assertEquals(0.0825 + out, widest, 1e-9);
        Loop outer = loop(drilling.outline());
        List<RoundHole> holes = drilling.holes();
        for (int i = 0; i < holes.size(); i++) {
            RoundHole hole = holes.get(i);
            assertEquals(0.009, inner.distance(hole.centre().u(), hole.centre().v()), 1e-4);
            assertEquals(0.009, outer.distance(hole.centre().u(), hole.centre().v()), 1e-4);
            RoundHole next = holes.get((i + 1) % holes.size());
            double apart = Math.hypot(next.centre().u() - hole.centre().u(), next.centre().v() - hole.centre().v());
            assertTrue(apart < 0.06 + 1e-9 && apart > 0.03, "apart " + apart);
            assertTrue(holes.stream().anyMatch(other -> Math.abs(other.centre().u() + hole.centre().u()) + Math.abs(other.centre().v() - hole.centre().v()) < 1e-9));
            assertTrue(holes.stream().anyMatch(other -> Math.abs(other.centre().u() - hole.centre().u()) + Math.abs(other.centre().v() + hole.centre().v()) < 1e-9));
        }
        double round = 2 * Math.PI * (0.0225 + out + 0.009) + 2 * (0.305 - 0.045) + 2 * (0.165 - 0.045);
        assertTrue(holes.size() >= round / 0.06 && holes.size() <= round / 0.06 + 4, holes.size() + " holes");
    }

    /** Both values that the refusal names are built. */
    @Test
    void badInput_tooNearTheEdge() {
        PocketOutcome.Refused refused = assertInstanceOf(PocketOutcome.Refused.class, cut(0.014, 0.005, 0.06));
        assertEquals("holes of 5.0 mm for screws come 7.0 mm from the edges of a ledge 14.0 mm wide, and a diameter and a half is least, 7.5 mm", refused.reason());
        assertEquals("a ledge of 15 mm or more, or holes of 4.6 mm at most", refused.remedy());
        assertEquals(0.005, drilling(0.015, 0.005, 0.06).holes().get(0).diameter(), 1e-12);
        assertEquals(0.0046, drilling(0.014, 0.0046, 0.06).holes().get(0).diameter(), 1e-12);
    }
}
