package org.garboard.flow.shadow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.craft.FeaturePlace;
import org.garboard.craft.Fitting;
import org.garboard.craft.Sides;
import org.garboard.craft.Strake;
import org.garboard.flow.doublebody.DoubleBody;
import org.garboard.flow.doublebody.HullFlow;
import org.garboard.flow.doublebody.MeshWish;
import org.garboard.flow.doublebody.Stern;
import org.garboard.flow.doublebody.WigleyHull;
import org.garboard.flow.streams.HullStreams;
import org.garboard.flow.streams.StreamPoint;
import org.garboard.flow.streams.Streamline;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.offsets.LineKind;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Shadows whose outlines are short sums, on a V bottom 12 m long and 1.5 m to either side. */
class ShadowTest {
    private static final Hull HULL = Hull.through(new Forms(0, Forms.even(0, 12, 5)).keel(x -> 0)
        .named(LineKind.CHINE, "Chine", x -> 1.5, x -> 0.5).named(LineKind.SHEER, "Sheer", x -> 1.6, x -> 1.5).table());
    private static final double TAN_6 = Math.tan(Math.toRadians(6));
    private static final double TAN_10 = Math.tan(Math.toRadians(10));

    private static Shadow shadow(Shedder feature, double outboard) {
        return assertInstanceOf(Shadow.class, new ShadowCaster(HULL, new AlongBottom(HULL, Angle.ofDegrees(0)), outboard).of(feature));
    }

    private static double area(List<PlanRegion> regions) {
        return regions.stream().mapToDouble(PlanRegion::area).sum();
    }

    private static Shedder drain(Sides sides) {
        return Shedder.point("drain", Sheds.FLUSH, sides, 2, 0.7, 0.05);
    }

    /** Both edges spread at 6 degrees until they have grown 150 mm, and end 5 m behind. */
    @Test
    void exact_flushFitting() {
        Shadow shadow = shadow(Shedder.point("drain", Sheds.FLUSH, Sides.STARBOARD, 2, 0.6, 0.05), 1);
        double grows = 0.15 / TAN_6;
        assertEquals(0.05 * 5.05 + 0.15 * grows + 0.3 * (5.05 - grows), area(shadow.wake()), 1e-9);
        // 10 degrees: from the forward corners over 5 m, from the after ones over the last 50 mm
        double more = 5 * 5 * TAN_10 + (0.05 * 2 * 5 - 0.05 * 0.05) * TAN_10;
        assertEquals(0.05 * 5.05 + more, area(shadow.advisory()), 1e-9);
        assertTrue(shadow.ahead().isEmpty());
        assertEquals(5, shadow.fading());
    }

    @ParameterizedTest
    @CsvSource({"FLUSH, 3", "PROUD, 3", "TUNNEL, 8", "OUTBOARD_PROPELLER, 9"})
    void exact_breadthBehind(Sheds sheds, double x) {
        Shadow shadow = shadow(Shedder.point("thing", sheds, Sides.STARBOARD, 2, 0.7, 0.05), 1);
        double half = 0.025 + Math.min(sheds.cap(), (x - 1.975) * TAN_6);
        assertTrue(inWake(shadow, x, 0.7 + half - 1e-6) && inWake(shadow, x, 0.7 - half + 1e-6));
        assertFalse(inWake(shadow, x, 0.7 + half + 1e-6) || inWake(shadow, x, 0.7 - half - 1e-6));
        assertFalse(inWake(shadow, x, -0.7), "to port");
    }

    private static boolean inWake(Shadow shadow, double x, double y) {
        return shadow.wake().stream().anyMatch(region -> region.contains(x, y));
    }

    @Test
    void exact_moreOutboard() {
        Shadow shadow = shadow(drain(Sides.STARBOARD), 2);
        double grown = 1.025 * TAN_6;
        assertTrue(inWake(shadow, 3, 0.725 + 2 * grown - 1e-6));
        assertFalse(inWake(shadow, 3, 0.725 + 2 * grown + 1e-6));
        assertFalse(inWake(shadow, 3, 0.675 - grown - 1e-6));
        Shadow port = shadow(drain(Sides.PORT), 2);
        assertTrue(inWake(port, 3, -0.725 - 2 * grown + 1e-6));
        assertEquals(area(shadow.wake()), area(port.wake()), 1e-12);
    }

    @Test
    void exact_bothSides() {
        assertEquals(2 * area(shadow(drain(Sides.STARBOARD), 1).wake()), area(shadow(drain(Sides.BOTH), 1).wake()), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"0.4, 1", "1, 1.5"})
    void exact_aheadOfAPropeller(double diameter, double reach) {
        Shadow shadow = shadow(Shedder.box("screw", Sheds.PROPELLER, Sides.STARBOARD, 10, 0.7, 0.2, diameter), 1);
        assertEquals((reach + 0.2) * diameter, area(shadow.ahead()), 1e-9);
        assertEquals(1, shadow.strength(9.9 - reach + 0.01, 0.7));
        assertEquals(0, shadow.strength(9.9 - reach - 0.01, 0.7));
        assertTrue(shadow(Shedder.box("leg", Sheds.OUTBOARD_PROPELLER, Sides.STARBOARD, 10, 0.7, 0.2, diameter), 1).ahead().isEmpty());
    }

    /** Beside a strake along the flow is clean water; behind its end not. */
    @Test
    void exact_strake() {
        List<FeaturePlace> places = List.of(place(2, 0.7), place(6, 0.7));
        Shadow shadow = shadow(Shedder.of(new Strake("inner strake", Sides.STARBOARD, places, 0.06, 0.03).on(HULL)), 1);
        assertTrue(inWake(shadow, 4, 0.7 + 0.0299));
        assertFalse(inWake(shadow, 4, 0.7 + 0.0301));
        double half = 0.03 + 4 * TAN_6;
        assertTrue(inWake(shadow, 10, 0.7 + half - 1e-6));
        assertFalse(inWake(shadow, 10, 0.7 + half + 0.06 * TAN_6 + 1e-6));
        assertEquals(1, shadow.strength(11.9, 0.7));
    }

    private static FeaturePlace place(double x, double y) {
        return new FeaturePlace(FeaturePlace.Datum.AFT_OF_ORIGIN, x, FeaturePlace.Measure.HALF_BREADTH, y);
    }

    /** A step from keel to chine leaves nothing clean behind it. */
    @Test
    void exact_step() {
        Shadow shadow = shadow(Shedder.along("step", Sheds.STEP, Sides.BOTH, List.of(Vector2D.of(7, 0), Vector2D.of(7, 1.5)), 3), 1);
        double outward = 0.1 * 0.1 / TAN_6 / 2;
        assertEquals(2 * (5 * 1.5 + 5 * 0.1 - outward), area(shadow.wake()), 1e-6, "to the sheer, which is 100 mm outside the chine");
        assertFalse(inWake(shadow, 6.99, 0.5));
    }

    /** Even fading over 5 m from where the water left the fitting. */
    @Test
    void exact_strength() {
        Shadow shadow = shadow(drain(Sides.STARBOARD), 1);
        assertEquals(1 - 1 / 5.0, shadow.strength(3.025, 0.73), 0.011);
        assertEquals(1 - 1 / 5.0, shadow.strength(2.975, 0.675), 1e-9);
        assertEquals(0, shadow.strength(3, 1.3));
        assertEquals(0, shadow.strength(8, 0.7));
    }

    @Test
    void law_featuresOfTheJobShedAsTheirKind() {
        assertEquals(Sheds.FLUSH, kind(Fitting.Type.INTAKE, Optional.of(0.0)));
        assertEquals(Sheds.PROUD, kind(Fitting.Type.INTAKE, Optional.of(0.05)));
        assertEquals(Sheds.PROUD, kind(Fitting.Type.ANODE, Optional.empty()));
        assertEquals(Sheds.TUNNEL, kind(Fitting.Type.TUNNEL, Optional.of(0.0)));
        assertEquals(Sheds.PROPELLER, kind(Fitting.Type.PROPELLER, Optional.empty()));
        for (Fitting.Type type : Fitting.Type.values()) {
            kind(type, Optional.of(0.1));
        }
    }

    /** As laid on the hull: kind, width and height come along. */
    @Test
    void law_laidFeaturesShedAsTheirKind() {
        Fitting tunnel = new Fitting("mouth", Fitting.Type.TUNNEL, Sides.BOTH, place(3, 0.4), 0.2, 0.1, Optional.of(0.0));
        assertEquals(Sheds.TUNNEL, Shedder.of(tunnel.on(HULL)).sheds());
        assertEquals(0.1, Shedder.of(tunnel.on(HULL)).width(), 1e-12);
        Fitting screw = new Fitting("screw", Fitting.Type.PROPELLER, Sides.BOTH, place(3, 0.4), 0.2, 0.4, Optional.of(0.0));
        assertEquals(Sheds.PROPELLER, Shedder.of(screw.on(HULL)).sheds());
        Fitting drain = new Fitting("drain", Fitting.Type.DRAIN, Sides.BOTH, place(3, 0.4), 0.2, 0.4, Optional.of(0.0));
        assertEquals(Sheds.FLUSH, Shedder.of(drain.on(HULL)).sheds());
        assertEquals(Sheds.PROUD, Shedder.of(new Fitting("drain", Fitting.Type.DRAIN, Sides.BOTH, place(3, 0.4), 0.2, 0.4, Optional.empty()).on(HULL)).sheds());
        Strake strake = new Strake("strake", Sides.BOTH, List.of(place(2, 0.7), place(6, 0.7)), 0.06, 0.03);
        assertEquals(Sheds.STRAKE, Shedder.of(strake.on(HULL)).sheds());
    }

    private static Sheds kind(Fitting.Type type, Optional<Double> height) {
        return Shedder.of(new Fitting("it", type, Sides.PORT, place(3, 0.4), 0.2, 0.1, height).on(HULL)).sheds();
    }

    /** Down streamlines the shadow's middle follows the water, not the boat's length. */
    @Test
    void law_shadowFollowsTheStreamline() {
        Hull wigley = WigleyHull.hull();
        HullStreams streams = new HullStreams(assertInstanceOf(HullFlow.class, DoubleBody.past(wigley,
            WaterSurface.level(WigleyHull.T), new MeshWish(40, 14, Stern.STRAIGHT_RUN))));
        ShadowCaster caster = new ShadowCaster(wigley, new AlongStreams(streams), 1);
        Streamline line = assertInstanceOf(Streamline.class, streams.through(2, 0.15));
        Shadow shadow = assertInstanceOf(Shadow.class, caster.of(Shedder.point("hole", Sheds.PROUD, Sides.STARBOARD, 2, 0.15, 0.04)));
        double before = 0;
        for (StreamPoint point : line.down()) {
            if (point.x() > 2.1 && point.x() < 11) {
                assertTrue(inWake(shadow, point.x(), point.y()), "at x = " + point.x());
                assertTrue(shadow.runTo(point.x(), point.y()) > before);
                before = shadow.runTo(point.x(), point.y());
            }
        }
        assertFalse(inWake(shadow, 1.9, 0.15));
        Cast.None none = assertInstanceOf(Cast.None.class, caster.of(Shedder.point("hole", Sheds.FLUSH, Sides.BOTH, 6, 0.7, 0.04)));
        assertEquals("hole", none.feature());
        assertEquals("y = 0.680 m at x = 5.980 m is off the hull in the water, which is 0.000 to 0.600 m from the centreline there", none.reason());
    }

    @Test
    void law_waterThatRunsOutboardTakesTheShadowWithIt() {
        ShadowCaster caster = new ShadowCaster(HULL, new AlongBottom(HULL, Angle.ofDegrees(5)), 1);
        Shadow shadow = assertInstanceOf(Shadow.class, caster.of(drain(Sides.BOTH)));
        double aside = 3 * Math.tan(Math.toRadians(5));
        assertTrue(inWake(shadow, 5, 0.7 + aside) && inWake(shadow, 5, -0.7 - aside));
        assertFalse(inWake(shadow, 5, 0.7 + aside - 0.025 - 0.16));
    }

    /** A line that is lost amid the bottom: what is drawn ends there, and that it may go on is said. */
    @Test
    void law_aLostLineIsToldOfTheShadow() {
        FlowLines lost = (x, y) -> new FlowLines.Line(List.of(Vector2D.of(x, y), Vector2D.of(5, y)), Optional.of("lost at x = 5 m"));
        Shadow shadow = assertInstanceOf(Shadow.class, new ShadowCaster(HULL, lost, 1).of(Shedder.point("anode", Sheds.PROUD, Sides.STARBOARD, 2, 0.7, 0.05)));
        assertEquals(Optional.of("lost at x = 5 m"), shadow.lost());
        assertFalse(inWake(shadow, 5.1, 0.7));
        assertEquals(Optional.empty(), shadow(drain(Sides.BOTH), 1).lost());
    }

    @Test
    void badInputIsNamed() {
        Cast.None off = assertInstanceOf(Cast.None.class, new ShadowCaster(HULL, new AlongBottom(HULL, Angle.ofDegrees(0)), 1)
            .of(Shedder.point("drain", Sheds.FLUSH, Sides.PORT, 13, 0.5, 0.1)));
        assertEquals("x = 12.950 m is off the hull, which is from 0.000 to 12.000 m", off.reason());
        off = assertInstanceOf(Cast.None.class, new ShadowCaster(HULL, new AlongBottom(HULL, Angle.ofDegrees(0)), 1)
            .of(Shedder.point("drain", Sheds.FLUSH, Sides.PORT, 3, 1.7, 0.1)));
        assertEquals("y = 1.650 m at x = 2.950 m is off the bottom, which is 1.500 m to either side there", off.reason());
        assertEquals("water that runs 40.00 degrees outboard: from 0 to 30 is possible",
            message(() -> new AlongBottom(HULL, Angle.ofDegrees(40))));
        assertEquals("a wake that spreads 0.5 times as much outboard as inboard: from 1 to 10 is possible",
            message(() -> new ShadowCaster(HULL, new AlongBottom(HULL, Angle.ofDegrees(0)), 0.5)));
        assertEquals("seam has 1 place(s); two are the least",
            message(() -> Shedder.along("seam", Sheds.STEP, Sides.BOTH, List.of(Vector2D.of(1, 0)), 1)));
        assertEquals("drain is 0.0 m wide: it must be more than 0", message(() -> Shedder.point("drain", Sheds.FLUSH, Sides.PORT, 1, 1, 0)));
    }

    private static String message(Executable call) {
        return assertThrows(IllegalArgumentException.class, call).getMessage();
    }
}
