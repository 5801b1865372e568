package org.garboard.hydrostatics;

import static org.garboard.hull.SteppedForms.LENGTH;
import static org.garboard.hull.SteppedForms.RISE;
import static org.garboard.hull.SteppedForms.STEP;
import static org.garboard.hull.SteppedForms.prism;
import static org.garboard.hull.SteppedForms.with;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;

import java.util.List;
import org.garboard.hull.Hull;
import org.garboard.offsets.EndPoint;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.StepLine;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * A prismatic V with a step: over each length the depth of the water is linear in plan, so that every figure is an
 * integral over a polygon.
 */
class StepsAfloatTest {
    private static final EndPoint KEEL = new EndPoint("Keel", LineKind.KEEL, 0, 5.2);
    private static final EndPoint CHINE = new EndPoint("Chine", LineKind.CHINE, 0, 4.7);

    private static Hull swept() {
        return Hull.through(with(prism(), new StepLine(5, List.of(KEEL, CHINE))));
    }

    private static Hull notched() {
        return Hull.through(with(prism(), new StepLine(5, List.of(KEEL, new EndPoint("Buttock 300", LineKind.BUTTOCK, 0.3, 5.2),
            new EndPoint("Buttock 300", LineKind.BUTTOCK, 0.3, 4.7), CHINE))));
    }

    private static void assertExact(double expected, double actual, String what) {
        assertEquals(expected, actual, 1e-9 * Math.max(1, Math.abs(expected)), what);
    }

    private static Hydrostatics afloat(Hull hull, WaterSurface water) {
        return assertInstanceOf(Hydrostatics.class, Hydrostatics.of(hull, water));
    }

    /** Depth of water over the V, raised or not. */
    private static Polygon.Field depth(WaterSurface water, double raised) {
        return (x, y) -> water.at(x) - RISE * y - raised;
    }

    private static void assertFigures(Hull hull, WaterSurface water, List<Polygon> forward, List<Polygon> after) {
        double volume = 0;
        double moment = 0;
        double plan = 0;
        for (int length = 0; length < 2; length++) {
            Polygon.Field depth = depth(water, length * STEP);
            for (Polygon part : length == 0 ? forward : after) {
                Polygon wet = part.where(depth);
                volume += 2 * wet.integral(depth);
                moment += 2 * wet.integral((x, y) -> x * depth.at(x, y));
                plan += 2 * wet.integral((x, y) -> 1);
            }
        }
        Hydrostatics figures = afloat(hull, water);
        assertExact(volume, figures.volume(), "volume");
        assertExact(moment / volume, figures.lcb(), "LCB");
        assertExact(plan * Math.hypot(1, RISE), figures.wettedSkin(), "skin");
        assertExact(plan / Math.cos(water.trim().radians()), figures.waterplane().area(), "waterplane");
    }

    @ParameterizedTest
    @CsvSource({"0.15, 0, 0", "0.22, 0, 0", "0.12, 5, 0.6", "0.15, 4, -0.8"})
    void exact_straightStep(double height, double about, double trim) {
        WaterSurface water = new WaterSurface(height, about, Angle.ofDegrees(trim));
        assertFigures(Hull.through(prism()), water, List.of(Polygon.rectangle(0, 5, 0, 1)),
            List.of(Polygon.rectangle(5, LENGTH, 0, 1)));
    }

    @ParameterizedTest
    @CsvSource({"0.15, 0, 0", "0.2, 0, 0", "0.12, 5, 0.6", "0.15, 4, -0.8"})
    void exact_sweptStep(double height, double about, double trim) {
        WaterSurface water = new WaterSurface(height, about, Angle.ofDegrees(trim));
        Polygon all = Polygon.rectangle(0, LENGTH, 0, 1);
        assertFigures(swept(), water, List.of(all.where((x, y) -> 5.2 - y / 2 - x)), List.of(all.where((x, y) -> x - 5.2 + y / 2)));
    }

    @ParameterizedTest
    @CsvSource({"0.15, 0, 0", "0.06, 0, 0", "0.12, 5, 0.6", "0.15, 4, -0.8"})
    void exact_notchedStep(double height, double about, double trim) {
        WaterSurface water = new WaterSurface(height, about, Angle.ofDegrees(trim));
        assertFigures(notched(), water, List.of(Polygon.rectangle(0, 5.2, 0, 0.3), Polygon.rectangle(0, 4.7, 0.3, 1)),
            List.of(Polygon.rectangle(5.2, LENGTH, 0, 0.3), Polygon.rectangle(4.7, LENGTH, 0.3, 1)));
    }

    /** At 0.2 m the forward face is wet out to 0.8 m, the after edge to 0.6 m; between the two its height runs out. */
    @Test
    void exact_wetFacesOfSteps() {
        WaterSurface water = WaterSurface.level(0.2);
        double half = 0.6 * STEP + 0.5 * 0.2 * STEP;
        assertExact(2 * half, WetEnds.of(Hull.through(prism()), water).steps(), "straight");
        assertExact(2 * half * Math.hypot(1, 0.5), WetEnds.of(swept(), water).steps(), "swept");
        assertExact(2 * (half + 0.5 * STEP), WetEnds.of(notched(), water).steps(), "notched");
    }
}
