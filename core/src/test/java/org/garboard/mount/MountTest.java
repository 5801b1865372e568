package org.garboard.mount;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.garboard.craft.Transducer;
import org.garboard.mount.pocket.Floor;
import org.garboard.mount.pocket.Walls;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

class MountTest {
    private static final Transducer BODY = new Transducer("body", 0.300, 0.140, 0.060, 0.020, 0.020, Angle.ofDegrees(12));
    private static final KeelPocket POCKET = new KeelPocket();

    private static Installation with(OptionalDouble depth) {
        return new Installation(BODY, new PocketWish(depth, 0.005, 8));
    }

    /** Everything that DESIGN asks of every place and the table cannot tell stands there as NOT KNOWN. */
    @Test
    void law_openQuestionsAreNotKnown() {
        for (Mount mount : List.of(new FlushThroughHull(), POCKET)) {
            // the plug on the cable of a stem that is told is the eighth
            assertEquals(8, mount.settled(with(OptionalDouble.empty()), Surroundings.UNTOLD).size());
            for (Check check : mount.settled(with(OptionalDouble.empty()), Surroundings.UNTOLD)) {
                assertEquals(Verdict.NOT_KNOWN, check.verdict());
                assertEquals(Check.Sense.KNOWN_ONLY, check.sense());
                assertTrue(Double.isNaN(check.utilisation()));
                assertTrue(check.sentence().startsWith("Look ") || check.name().equals("hole large enough for the connector"), check.sentence());
            }
        }
    }

    @Test
    void law_everyLimitHasItsSource() {
        for (Mount mount : Mount.all()) {
            for (Demand demand : mount.demands(with(OptionalDouble.empty()), Surroundings.UNTOLD)) {
                String source = demand.limit().source();
                assertTrue(source.startsWith("our choice, because ") || source.startsWith("common practice, no source"),
                    demand.name() + ": " + source);
            }
        }
    }

    /** Rise of a V of 15 deg over half the floor's width: 75 mm tan 15 = 20.096 mm. */
    @Test
    void exact_pocketAcrossAV() {
        Footprint floor = POCKET.footprint(with(OptionalDouble.empty()));
        assertEquals(0.310, floor.length(), 1e-12);
        assertEquals(0.150, floor.width(), 1e-12);
        assertEquals(0.025, floor.cornerRadius(), 1e-12);
        double tangent = Math.tan(Math.toRadians(15));
        KeelSeat seat = KeelSeat.under((x, y) -> Math.abs(y) * tangent, 3, floor, 11);
        assertEquals(0.075 * tangent, seat.rise(), 1e-12);
        assertEquals(0.075 * tangent, seat.highest(), 1e-12);
        assertEquals(0.081, POCKET.depth(with(OptionalDouble.empty()), seat.rise()), 1e-12);
        assertEquals(8 * 0.021 + Walls.USUAL.run(0.06), POCKET.ramp(with(OptionalDouble.empty()), seat.rise()), 1e-9);
    }

    /** On a keel line that slopes, the rise is taken square to it: plumb rise times the cosine. */
    @Test
    void exact_riseIsSquareToTheKeelLine() {
        double tangent = Math.tan(Math.toRadians(15));
        KeelSeat seat = KeelSeat.under((x, y) -> 0.1 * x + Math.abs(y) * tangent, 3, new Footprint(0.3, 0.15, 0), 11);
        assertEquals(0.1, seat.slope(), 1e-12);
        assertEquals(0.075 * tangent * Math.cos(Math.atan(0.1)), seat.rise(), 1e-12);
    }

    @Test
    void law_offTheSkinThereIsNoSeat() {
        assertFalse(KeelSeat.under((x, y) -> x > 3.1 ? Double.NaN : 0, 3, new Footprint(0.3, 0.15, 0), 11).onSkin());
        assertFalse(KeelSeat.under((x, y) -> y > 0.05 ? Double.NaN : 0, 3, new Footprint(0.3, 0.15, 0), 11).onSkin());
    }

    private static Check check(Installation installation, double rise, String name) {
        Bed bed = new RiseOnly(rise);
        return POCKET.demands(installation, Surroundings.UNTOLD).stream().filter(demand -> demand.name().equals(name))
            .findFirst().orElseThrow().check(bed);
    }

    /** 70 mm deep, body 60 mm: at a rise of 10 mm the face is just within the skin, at 15 mm 5 mm proud. */
    @Test
    void exact_aDepthThatIsTooSmall() {
        Installation shallow = with(OptionalDouble.of(0.070));
        assertEquals(Verdict.MET, check(shallow, 0.010, "face proud of the skin").verdict());
        Check proud = check(shallow, 0.015, "face proud of the skin");
        assertEquals(Verdict.NOT_MET, proud.verdict());
        assertEquals(5, proud.demand(), 1e-9);
        assertEquals(55, check(shallow, 0.015, "wall height beside the body").demand(), 1e-9);
        assertEquals(60, check(with(OptionalDouble.empty()), 0.0153, "wall height beside the body").demand(), 1e-9);
        assertEquals(Verdict.NOT_MET, check(shallow, 0.056, "wall height beside the body").verdict());
    }

    /** A pocket deeper than it need be lifts the face: 120 mm less 60 mm body less 20 mm rise is 40 mm lost. */
    @Test
    void exact_aDeepPocketLiftsTheFace() {
        assertEquals(300, check(with(OptionalDouble.empty()), 0.020, "depth of the face at rest").demand(), 1e-9);
        assertEquals(260, check(with(OptionalDouble.of(0.120)), 0.020, "depth of the face at rest").demand(), 1e-9);
    }

    @Test
    void badInput_footprintWithoutWidth() {
        IllegalArgumentException refusal = assertThrows(IllegalArgumentException.class, () -> new Footprint(0.3, 0, 0));
        assertEquals("footprint of 0.3 m x 0.0 m with corners of 0.0 m; length and width must be above 0,"
            + " the radius not below", refusal.getMessage());
    }

    /** 300 mm of water over the highest skin. */
    private record RiseOnly(double rise) implements Bed {
        @Override
        public double gap() {
            return Double.NaN;
        }

        @Override
        public double deadrise() {
            return 0;
        }

        @Override
        public double slope() {
            return 0;
        }

        @Override
        public double roomToKeel() {
            return Double.NaN;
        }

        @Override
        public double roomToBottomEdge() {
            return 1;
        }

        @Override
        public double aheadOfPropellers() {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public double roomToFeature() {
            return Double.POSITIVE_INFINITY;
        }

        @Override
        public double roomToKnuckle() {
            return 1;
        }

        @Override
        public double roomToEnds() {
            return 1;
        }

        @Override
        public double immersion() {
            return 0.300;
        }

        @Override
        public double keelGap() {
            return 0;
        }
    }

    /** In which order they are tried unless the job asks otherwise. */
    @Test
    void exact_allMountsTheLeastInvasiveFirst() {
        assertEquals(List.of("transom-mount", "in-hull", "flush-through-hull", "through-hull-with-fairing-block", "keel-pocket"),
            Mount.all().stream().map(Mount::word).toList());
    }

    /** Beside the keel of a V: a level floor is as high over its outer side as the side rises, one that leans with it touches all over. */
    @Test
    void exact_seatBesideTheKeel() {
        double tangent = Math.tan(Math.toRadians(20));
        Footprint floor = new Footprint(0.3, 0.15, 0);
        KeelSeat level = KeelSeat.under((x, y) -> Math.abs(y) * tangent, 3, 0.4, Floor.Lies.LEVEL_ATHWART, floor, 11);
        assertEquals(0.075 * tangent, level.rise(), 1e-12);
        assertEquals(tangent, level.athwart(), 1e-12);
        KeelSeat leaning = KeelSeat.under((x, y) -> Math.abs(y) * tangent, 3, 0.4, Floor.Lies.SQUARE_TO_SKIN, floor, 11);
        assertEquals(0, leaning.rise(), 1e-12);
        assertEquals((0.4 + 0.075 * Math.cos(Math.toRadians(20))) * tangent, leaning.highest(), 1e-12);
    }
}
