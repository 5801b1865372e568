package org.garboard.hull;

import static org.garboard.hull.SteppedForms.AT;
import static org.garboard.hull.SteppedForms.LENGTH;
import static org.garboard.hull.SteppedForms.RISE;
import static org.garboard.hull.SteppedForms.STEP;
import static org.garboard.hull.SteppedForms.joined;
import static org.garboard.hull.SteppedForms.prism;
import static org.garboard.hull.SteppedForms.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.garboard.lines.ExpandedSection;
import org.garboard.offsets.EndPoint;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.OffsetTable;
import org.garboard.offsets.StepLine;
import org.garboard.offsets.TableFaults;
import org.junit.jupiter.api.Test;

/** A V bottom of one section throughout, with a step across it, straight, swept and notched. */
class StepTest {
    private static final double EXACT = 1e-9;

    private static EndPoint keel(double x) {
        return new EndPoint("Keel", LineKind.KEEL, 0, x);
    }

    private static EndPoint buttock(double y, double x) {
        return new EndPoint("Buttock " + y, LineKind.BUTTOCK, y, x);
    }

    private static EndPoint chine(double x) {
        return new EndPoint("Chine", LineKind.CHINE, 0, x);
    }

    /** Swept forward from 5.2 m at the keel to 4.7 m at the chine: x = 5.2 - y / 2. */
    private static Hull swept() {
        return Hull.through(with(prism(), new StepLine(5, List.of(keel(5.2), chine(4.7)))));
    }

    private static Hull notched() {
        return Hull.through(with(prism(),
            new StepLine(5, List.of(keel(5.2), buttock(0.4, 5.2), buttock(0.4, 4.9), chine(4.9)))));
    }

    @Test
    void exact_bothFacesOfAStraightStep() {
        Hull hull = Hull.through(prism());
        assertEquals(0.5 * RISE, hull.height(AT, 0.5), EXACT, "the forward face answers at the step");
        assertEquals(0.5 * RISE + STEP, hull.height(Math.nextUp(AT), 0.5), EXACT);
        assertEquals(0.5 * RISE + STEP, hull.height(LENGTH, -0.5), EXACT);
        assertEquals(0, hull.at(AT, 0.5).orElseThrow().buttockSlope().radians(), EXACT);
        Step step = hull.steps().get(0);
        assertEquals("4", step.name());
        for (double y = 0; y <= 1; y += 0.1) {
            assertEquals(AT, step.x(y), EXACT);
            assertEquals(STEP, step.height(y), EXACT);
            assertEquals(y * RISE, step.lower(y), EXACT);
        }
        assertEquals(1, step.outer(), EXACT);
        assertEquals(1, hull.steps().size());
    }

    @Test
    void exact_sectionsAtAStraightStep() {
        Hull hull = Hull.through(prism());
        assertEquals(2, new HullCurves(hull).section(AT, 1e-4).size());
        assertEquals(0, new HullCurves(hull).section(AT, 1e-4).get(0).points().get(0).getZ(), EXACT);
        assertEquals(STEP, new HullCurves(hull).section(Math.nextUp(AT), 1e-4).get(0).points().get(0).getZ(), EXACT);
        assertEquals(Math.hypot(0.4, 0.4 * RISE), hull.girth(AT + 1, 0.4), EXACT);
        assertEquals(0.4, hull.halfBreadth(AT + 1, 0.4 * RISE + STEP).orElseThrow(), EXACT);
    }

    /** The forward length up to the line, the after length from there on, at places by lot. */
    @Test
    void exact_sweptStep() {
        Hull hull = swept();
        Random lot = new Random(7);
        for (int i = 0; i < 2000; i++) {
            double x = 4.5 + lot.nextDouble();
            double y = 2 * lot.nextDouble() - 1;
            double raised = x > 5.2 - Math.abs(y) / 2 ? STEP : 0;
            assertEquals(Math.abs(y) * RISE + raised, hull.height(x, y), EXACT, "at " + x + ", " + y);
        }
        assertEquals(0.6 * RISE, hull.height(hull.steps().get(0).x(0.6), 0.6), EXACT, "the forward face answers");
        assertEquals(5.2 - 0.3, hull.steps().get(0).x(-0.6), EXACT);
        assertEquals(STEP, hull.steps().get(0).height(0.6), EXACT);
    }

    /** At x = 5 the line stands at y = 0.4: forward skin inboard of it, after skin outboard, the face between. */
    @Test
    void exact_sectionThroughASweptStep() {
        Hull hull = swept();
        List<Curve> section = new HullCurves(hull).section(5, 1e-4);
        assertEquals(3, section.size());
        assertEquals(0.4, section.get(0).points().get(section.get(0).points().size() - 1).getY(), EXACT);
        assertEquals(0.4 * RISE + STEP, section.get(1).points().get(0).getZ(), EXACT);
        double inner = Math.hypot(0.4, 0.4 * RISE);
        double outer = Math.hypot(0.3, 0.3 * RISE);
        assertEquals(inner + STEP + outer, hull.girth(5, 0.7), EXACT);
        assertEquals(inner, hull.girth(5, 0.4), EXACT);
        double[] girths = ExpandedSection.girths(hull, 5);
        assertEquals(inner + STEP + 2 * outer, girths[1], EXACT);
        double[] heights = new double[9];
        hull.heights(5, 0.1, heights, 0, 9);
        for (int i = 0; i < 9; i++) {
            assertEquals(0.1 * i * RISE + (i > 4 ? STEP : 0), heights[i], EXACT);
        }
    }

    @Test
    void exact_curvesEndOnASweptStep() {
        Hull hull = swept();
        List<Curve> buttock = new HullCurves(hull).buttock(0.6, 1e-5);
        assertEquals(2, buttock.size());
        assertEquals(4.9, buttock.get(0).points().get(buttock.get(0).points().size() - 1).getX(), EXACT);
        assertEquals(4.9, buttock.get(1).points().get(0).getX(), EXACT);
        assertEquals(STEP, buttock.get(1).points().get(0).getZ() - buttock.get(0).points().get(0).getZ(), EXACT);
        List<Curve> waterline = new HullCurves(hull).waterline(0.2, 1e-5);
        assertEquals(2, waterline.size());
        assertEquals(5.2 - 0.4, waterline.get(0).points().get(waterline.get(0).points().size() - 1).getX(), EXACT);
        assertEquals(5.2 - 0.3, waterline.get(1).points().get(0).getX(), EXACT);
        List<Curve> chine = new HullCurves(hull).line(hull.bottomEdge(), 1e-5);
        assertEquals(4.7, chine.get(0).points().get(chine.get(0).points().size() - 1).getX(), EXACT);
        assertEquals(4.7, chine.get(1).points().get(0).getX(), EXACT);
        assertEquals(RISE + STEP, hull.bottomEdge().z(4.8), EXACT);
        assertEquals(RISE, hull.bottomEdge().z(4.7 - 1e-9), EXACT);
        assertEquals(5.2, new HullCurves(hull).line(hull.keel(), 1e-5).get(1).points().get(0).getX(), EXACT);
    }

    @Test
    void exact_notch() {
        Hull hull = notched();
        assertEquals(0.3 * RISE, hull.height(5.2, 0.3), EXACT);
        assertEquals(0.3 * RISE + STEP, hull.height(5.2001, 0.3), EXACT);
        assertEquals(0.4 * RISE, hull.height(5.1, 0.4), EXACT, "the inboard face answers");
        assertEquals(0.41 * RISE + STEP, hull.height(5.1, 0.41), EXACT);
        assertEquals(0.41 * RISE, hull.height(4.9, 0.41), EXACT);
        assertEquals(STEP, new HullCurves(hull).section(5, 1e-4).get(1).points().get(0).getZ() - 0.4 * RISE, 1e-7);
    }

    /** Two steps, and each length on its own: the middle one curved as the square of x. */
    @Test
    void exact_twoStepsEachLengthByItsOwnStations() {
        OffsetTable table = joined(part(0, 0, 1, 2, 3), part(1, 3, 4, 5, 6), part(2, 6, 7, 8, 9));
        Hull hull = Hull.through(table);
        assertEquals(2, hull.steps().size());
        assertEquals(6, hull.panels().size());
        for (double x : new double[] {0.5, 3, 3.5, 5.5, 6, 6.5, 9}) {
            int length = x > 6 ? 2 : x > 3 ? 1 : 0;
            assertEquals(0.3 * RISE + bend(length, x), hull.height(x, 0.3), EXACT, "x " + x);
            assertEquals(Math.atan(0.02 * (length + 1) * (x - 3)), hull.at(x, 0.3).orElseThrow().buttockSlope().radians(), EXACT);
        }
    }

    private static double bend(int length, double x) {
        return 0.1 * length + 0.01 * (length + 1) * (x - 3) * (x - 3);
    }

    private static OffsetTable part(int length, double... stations) {
        return new Forms(0, stations).keel(x -> bend(length, x))
            .named(LineKind.CHINE, "Chine", x -> 1, x -> RISE + bend(length, x))
            .named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 2.5).table();
    }

    /** Both faces run down aft, the after one steeper: ahead of the stations it lies lower than the forward one. */
    @Test
    void badInput_sweptStepThatGoesTheWrongWayOffItsStations() {
        OffsetTable table = joined(slope(0, 0, 0, 2, 4, 5), slope(STEP, 0.2, 5, 6, 7, 8));
        String message = assertThrows(HullNotDrawn.class,
            () -> Hull.through(with(table, new StepLine(4, List.of(keel(5), chine(4.5)))))).getMessage();
        assertEquals("the step at station 3 goes the wrong way 0.550 m from the centreline, at x = 4.725 m: there the skin abaft"
            + " of it is drawn 5.0 mm below the skin ahead of it, and would catch the water; compare both faces' stations there",
            message);
    }

    private static OffsetTable slope(double raised, double rise, double... stations) {
        return new Forms(0, stations).keel(x -> raised + rise * (x - 5))
            .named(LineKind.CHINE, "Chine", x -> 1, x -> RISE + raised + rise * (x - 5))
            .named(LineKind.SHEER, "Sheer", x -> 1.2, x -> 2.5).table();
    }

    /** Two faces with the same values are no step. */
    @Test
    void law_facesAlikeAreNoStep() {
        OffsetTable same = joined(part(0, 0, 1, 2, 3), part(0, 3, 4, 5, 6));
        assertFalse(TableFaults.of(same).isEmpty());
    }

    @Test
    void law_sweptStepIsLoftedOnPastItsStations() {
        Hull hull = swept();
        Panel forward = hull.panels().get(0);
        Panel after = hull.panels().get(2);
        assertEquals(5.2, forward.knotsAlong().end(), 0);
        assertEquals(4.7, after.knotsAlong().start(), 0);
        assertTrue(forward.isSkin(5.1, 0.1));
        assertFalse(forward.isSkin(5.1, 0.3));
        assertTrue(after.isSkin(5.1, 0.3));
    }
}
