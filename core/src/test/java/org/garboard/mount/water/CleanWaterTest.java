package org.garboard.mount.water;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.RunningSpeed;
import org.garboard.craft.Transducer;
import org.garboard.flow.attitude.AtSpeed;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.attitude.Basis;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.flow.steps.AirBehind;
import org.garboard.flow.steps.SteppedBottom;
import org.garboard.flow.streams.StreamPoint;
import org.garboard.flow.streams.Streamline;
import org.garboard.flow.streams.SweepDown;
import org.garboard.flow.water.Water;
import org.garboard.geometry.Ring;
import org.garboard.hull.Hull;
import org.garboard.hull.SteppedForms;
import org.garboard.mount.Check;
import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.Installation;
import org.garboard.mount.LaidBottom;
import org.garboard.mount.Mount;
import org.garboard.mount.PocketWish;
import org.garboard.mount.Surroundings;
import org.garboard.mount.Verdict;
import org.garboard.siting.Mark;
import org.garboard.siting.Siting;
import org.garboard.siting.SitingTask;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Water that air has been in: behind a step, 5 m aft on a bottom 9 m long and 2 m wide; and down from the surface at the bow. */
class CleanWaterTest {
    private static final Hull HULL = Hull.through(SteppedForms.prism());
    private static final Mount FLUSH = new FlushThroughHull();
    private static final double ON_CENTRELINE = 0.8;
    private static final double AT_QUARTER = 1.2;

    /** Nothing is sited to a beam abaft of where the water comes back, out to a quarter of the beam. */
    private static Attitude stepped(Optional<Double> centreline) {
        double to = 5 + AT_QUARTER + 2;
        PlanRegion region = new PlanRegion(new Ring(List.of(Vector2D.of(5, 0), Vector2D.of(to, 0), Vector2D.of(to, 0.5), Vector2D.of(9, 0.5),
            Vector2D.of(9, 1), Vector2D.of(5, 1))), List.of());
        AirBehind air = new AirBehind(HULL.steps().get(0).name(), centreline, centreline.map(known -> AT_QUARTER), "as told", region);
        return new Attitude.Stepped(15, Basis.WORKED_OUT, Angle.ofDegrees(3), Optional.empty(), new SteppedBottom(5, List.of(air), List.of()), List.of("trim as told"));
    }

    private static Check behind(Optional<Double> centreline, double x, double y) {
        BottomWater water = RunningWater.of(HULL, Water.sea(15), List.of(new AtSpeed(new RunningSpeed("top", 30, Optional.empty()), stepped(centreline), List.of())))
            .over(List.of());
        Surroundings around = new Surroundings(HULL.foot(), Optional.empty(), Optional.empty(), Optional.empty(), Optional.empty(), water,
            Optional.of(new LaidBottom(HULL, new BottomFeatures(List.of(), BottomFeatures.FeatureList.GIVEN))));
        Installation installation = new Installation(new Transducer("body", 0.12, 0.08, 0.06, 0, 0.02, Angle.ofDegrees(14)),
            new PocketWish(OptionalDouble.empty(), 0.005, 8));
        SitingTask task = new SitingTask(0.5, installation, List.of(FLUSH), Mark.FIVE_MILLIMETRES,
            new BottomFeatures(List.of(), BottomFeatures.FeatureList.GIVEN), around);
        return Siting.at(HULL, task, FLUSH, x, y).checks().stream().filter(check -> check.name().equals("clear of the air behind steps")).findFirst().orElseThrow();
    }

    /** Clean abaft of the step: 0.25 m out, half way to the quarter beam, the water comes back 1 m behind it; beams of 2 m. */
    @Test
    void exact_cleanAbaftOfAStep() {
        Check clean = behind(Optional.of(ON_CENTRELINE), 8.4, 0.25);
        assertEquals((8.4 - 5 - 1) / 2, clean.demand(), 1e-9);
        assertEquals(Verdict.MET, clean.verdict());
        assertEquals("The place lies ahead of the steps, or well abaft of where the water comes back.", clean.sentence());
        assertEquals(Verdict.MET, behind(Optional.of(ON_CENTRELINE), 4, 0.25).verdict());
    }

    @Test
    void law_airBehindAStep() {
        assertEquals(Verdict.NOT_MET, behind(Optional.of(ON_CENTRELINE), 8, 0.25).verdict());
        assertEquals(Verdict.NOT_MET, behind(Optional.of(ON_CENTRELINE), 8.4, 0.7).verdict());
        assertEquals(Verdict.NOT_MET, behind(Optional.empty(), 8.4, 0.25).verdict());
    }

    /** Ten lines aft, 10 mm under one another at 0.3 m out: within 45 mm of the skin there pass half of them, on either side. */
    @Test
    void exact_sweptDown() {
        List<Streamline> lines = IntStream.range(0, 10).mapToObj(i -> new Streamline(
            List.of(new StreamPoint(1, 0.3, -0.01 * i, 0, 1), new StreamPoint(4, 0.3, -0.01 * i, 3, 1), new StreamPoint(8, 0.3, -0.01 * i, 7, 1)), 0,
            Streamline.Followed.TO_THE_END, Streamline.Followed.TO_THE_END)).toList();
        SweptShare share = SweptShare.of(new SweepDown(0.3, 1, lines), 0.045);
        assertEquals(0.5, share.at(6, 0.3, 0), 0);
        assertEquals(0.5, share.at(6, -0.3, 0), 0);
        assertEquals(0.9, share.at(4, 0.3, -0.05), 1e-12);
        assertEquals(0, share.at(6, 0.4, 0), 0);
        assertTrue(share.at(8.04, 0.3, 0) > 0 && share.at(8.05, 0.3, 0) == 0);
    }
}
