package org.garboard.flow.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.attitude.Load;
import org.garboard.flow.attitude.RunningHull;
import org.garboard.flow.cavitation.Inception;
import org.garboard.flow.cavitation.Suction;
import org.garboard.flow.layer.Layer;
import org.garboard.flow.layer.LayerLaw;
import org.garboard.flow.streams.StreamPoint;
import org.garboard.flow.streams.Streamline;
import org.garboard.flow.water.Water;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.offsets.LineKind;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

class PlaceInFlowTest {
    private static final double RISE = Math.tan(Math.toRadians(19));
    private static final Hull PRISM = Hull.through(new Forms(0, 0, 2, 4, 6, 8).keel(x -> 0)
        .named(LineKind.CHINE, "Chine", x -> 1.05, x -> 1.05 * RISE).named(LineKind.SHEER, "Sheer", x -> 1.1, x -> 2).table());
    private static final Water SEA = Water.sea(15);
    private static final RunningHull BOAT = (RunningHull) RunningHull.of(PRISM, Optional.empty(), new Load(2243, 5.7, 0.75, -0.2, Angle.ofDegrees(0)), SEA);
    private static final PlaceInFlow FLOW = PlaceInFlow.usual(PRISM, SEA);

    private static Attitude.Planes planes(double speed) {
        Attitude attitude = BOAT.at(speed);
        return assertInstanceOf(Attitude.Planes.class, attitude, attitude.toString());
    }

    private static LayerThere.Grown grown(LayerThere layer) {
        return assertInstanceOf(LayerThere.Grown.class, layer, layer.toString());
    }

    /** On a prism the water runs level from the line straight aft: the layer is the law's own after that run. */
    @Test
    void exact_planingRunBeginsAtTheLine() {
        Attitude.Planes fast = planes(12);
        double start = fast.line().x(0.3);
        LayerThere.Grown there = grown(FLOW.layer(fast, 7.5, 0.3));
        assertEquals(start, there.start(), 0);
        LayerLaw.Known law = assertInstanceOf(LayerLaw.Known.class, LayerLaw.USUAL.after(7.5 - start, fast.run().bottomSpeed(), SEA));
        assertEquals(law.layer().thickness(), there.layer().thickness(), 1e-12);
        assertEquals(there.layer(), grown(FLOW.layer(fast, 7.5, -0.3)).layer());
        assertTrue(there.layer().clearHeight() > there.layer().displacement() && there.layer().displacement() > there.layer().momentum());
        assertTrue(grown(FLOW.layer(fast, 7.8, 0.3)).layer().thickness() > there.layer().thickness());
        assertTrue(grown(FLOW.layer(fast, 7.5, 0.5)).layer().thickness() < there.layer().thickness());
    }

    @Test
    void exact_afloatItBeginsAtTheForwardEndOfTheWaterLine() {
        Attitude.Floats slow = assertInstanceOf(Attitude.Floats.class, BOAT.at(3));
        LayerThere.Grown there = grown(FLOW.layer(slow, 6, 0.1));
        assertEquals(6 - slow.afloat().hull().from(), there.layer().run(), 1e-9);
        assertEquals(Standing.REPORTED, there.standing());
        Streamline line = new Streamline(List.of(new StreamPoint(0.5, 0.3, 0.2, 0, 0.9), new StreamPoint(6.5, 0.1, 0.05, 6.2, 1.1)), 0,
            Streamline.Followed.TO_THE_END, Streamline.Followed.TO_THE_END);
        LayerThere.Grown along = grown(FLOW.layer(slow, line, 6.5));
        assertEquals(6.2, along.layer().run(), 1e-12);
        assertEquals(3.3, along.layer().speed(), 1e-12);
        Streamline lost = new Streamline(line.points(), 0, Streamline.Followed.LOST, Streamline.Followed.TO_THE_END);
        assertEquals(lost.lost().orElseThrow(), assertInstanceOf(LayerThere.NotKnown.class, FLOW.layer(slow, lost, 6.5)).reason());
    }

    /** Judged from 8 knots, or from where it is set. */
    @Test
    void exact_standing() {
        double knot = 1852 / 3600.0;
        assertEquals(Standing.REPORTED, Standing.at(7.99 * knot, Standing.USUAL_FROM));
        assertEquals(Standing.JUDGED, Standing.at(8 * knot, Standing.USUAL_FROM));
        assertEquals(Standing.JUDGED, Standing.at(5 * knot, 5));
        assertEquals(Standing.JUDGED, grown(FLOW.layer(planes(12), 7.5, 0.1)).standing());
    }

    /** The depth is that below the undisturbed water at running trim, the speed that of the shape at that depth. */
    @Test
    void exact_inceptionAtRunningDepth() {
        Attitude.Planes fast = planes(12);
        Suction nose = new Suction.FairingNose(0.6, 0.2, 0.06, Angle.ofDegrees(5));
        InceptionThere.From there = assertInstanceOf(InceptionThere.From.class, FLOW.inception(fast, 8, 0, nose));
        assertEquals(fast.run().draught(), there.depth(), 1e-9);
        double least = nose.least();
        assertEquals(new Inception(SEA, there.depth()).speed(least), there.speed(), 1e-9);
        assertEquals(12 / there.speed(), there.share(), 1e-12);
        InceptionThere.From forward = assertInstanceOf(InceptionThere.From.class, FLOW.inception(fast, 7, 0, nose));
        assertEquals(there.depth() - Math.sin(fast.trim().radians()), forward.depth(), 1e-9);
        assertTrue(forward.speed() < there.speed());
        InceptionThere.From edge = assertInstanceOf(InceptionThere.From.class, FLOW.inception(fast, 7, 0, new Suction.RoundedEdge(0.006, 0.005)));
        assertTrue(edge.speed() < forward.speed());
    }

    /** A bead low in the layer meets the speed of the layer's own profile at its height. */
    @Test
    void exact_beadInTheLayer() {
        Attitude.Planes fast = planes(12);
        InceptionThere.From outside = assertInstanceOf(InceptionThere.From.class, FLOW.inception(fast, 7.5, 0.2, Suction.RoundedEdge.BEAD));
        InceptionThere.From within = assertInstanceOf(InceptionThere.From.class, FLOW.inceptionInLayer(fast, 7.5, 0.2, Suction.RoundedEdge.BEAD));
        Layer layer = grown(FLOW.layer(fast, 7.5, 0.2)).layer();
        assertEquals(outside.speed() * layer.speed() / layer.velocityAt(0.0005), within.speed(), 1e-9);
        assertEquals(12 / within.speed(), within.share(), 1e-12);
        assertEquals(outside.depth(), within.depth());
        assertInstanceOf(InceptionThere.NotKnown.class, FLOW.inceptionInLayer(fast, 1, 0.2, Suction.RoundedEdge.BEAD));
    }

    /** Where the chine goes on outward abaft of the line, the water there has run from the chine. */
    @Test
    void exact_widerAbaftOfTheLine() {
        Hull widening = Hull.through(new Forms(0, 0, 2, 4, 6, 8).keel(x -> 0)
            .named(LineKind.CHINE, "Chine", x -> 0.95 + 0.025 * x, x -> (0.95 + 0.025 * x) * RISE).named(LineKind.SHEER, "Sheer", x -> 1.3, x -> 2).table());
        RunningHull boat = (RunningHull) RunningHull.of(widening, Optional.empty(), new Load(2243, 5.7, 0.75, -0.2, Angle.ofDegrees(0)), SEA);
        Attitude.Planes fast = assertInstanceOf(Attitude.Planes.class, boat.at(12));
        double y = widening.bottomEdge().y(7.9) - 1e-3;
        assertTrue(Double.isNaN(fast.line().x(y)), "wider than the line");
        PlaceInFlow flow = PlaceInFlow.usual(widening, SEA);
        assertEquals(fast.line().atChine(), grown(flow.layer(fast, 7.9, y)).start(), 0);
        assertInstanceOf(LayerThere.NotKnown.class, flow.layer(fast, 7.9, y + 0.01), "past the chine");
    }

    @Test
    void whereThereIsNoWaterThereIsNoNumber() {
        Attitude.Planes fast = planes(12);
        String start = String.format(java.util.Locale.ROOT, "%.3f", fast.line().x(0.3));
        assertEquals("x = 1.000 m lies ahead of the stagnation line, which is at x = " + start + " m there: wetted by spray at most",
            assertInstanceOf(LayerThere.NotKnown.class, FLOW.layer(fast, 1, 0.3)).reason());
        assertEquals("x = 9.000 m, y = 0.000 m is off the skin",
            assertInstanceOf(InceptionThere.NotKnown.class, FLOW.inception(fast, 9, 0, Suction.RoundedEdge.BEAD)).reason());
        Attitude none = BOAT.at(4.2);
        assertEquals(assertInstanceOf(Attitude.NotKnown.class, none).reason(),
            assertInstanceOf(LayerThere.NotKnown.class, FLOW.layer(none, 7, 0.3)).reason());
    }
}
