package org.garboard.drawing.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.BottomFeatures.FeatureList;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.RunningSpeed;
import org.garboard.craft.Sides;
import org.garboard.cutout.made.PartsMade;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Flattened;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.SheetClearance;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;
import org.garboard.flow.attitude.AtSpeed;
import org.garboard.flow.attitude.Attitude;
import org.garboard.flow.attitude.Basis;
import org.garboard.flow.attitude.Regime;
import org.garboard.flow.attitude.StagnationLine;
import org.garboard.flow.planing.Prism;
import org.garboard.flow.planing.PrismRun;
import org.garboard.flow.planing.Stream;
import org.garboard.flow.water.Water;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Units;
import org.garboard.job.SitingRecord;
import org.garboard.mount.water.BottomWater;
import org.garboard.mount.water.RunningWater;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Sheet 1 of a boat of 6.706 m that planes at attitudes that are given, an intake to port. */
class SitingWaterTest {
    private static final SampleBoat BOAT = new SampleBoat(6.706, 11);
    private static final Hull HULL = Hull.through(BOAT.table());
    private static final Water SEA = Water.sea(15);
    private static final LaidFeature INTAKE = new LaidFeature("Intake", "intake", Sides.PORT,
        List.of(Quad.of(3, 0.4, 3.1, 0.4, 3.1, 0.5, 3, 0.5)), Optional.of(0.05));

    private static AtSpeed planes(double knots, double keel) {
        double speed = knots * 1852 / 3600;
        PrismRun run = new PrismRun(new Prism(2, Angle.ofDegrees(20)), Stream.of(SEA, speed), Angle.ofDegrees(4), 2, speed, 0, 0, 0, 0);
        return at(knots, new Attitude.Planes(speed, Basis.WORKED_OUT, Angle.ofDegrees(4), 6.7, new WaterSurface(0.5, 6.7, Angle.ofDegrees(4)),
            new StagnationLine(List.of(Vector2D.of(keel, 0), Vector2D.of(keel + 2, 0.8))), run, Optional.empty(), List.of()));
    }

    private static AtSpeed at(double knots, Attitude attitude) {
        return new AtSpeed(new RunningSpeed("fast", knots, Optional.empty()), attitude, List.of());
    }

    private static SheetTask task(BottomWater water) {
        SitingRecord bare = BOAT.record(Units.MILLIMETRES, Paper.A1);
        SitingRecord record = new SitingRecord(bare.job(), new BottomFeatures(List.of(INTAKE), FeatureList.GIVEN), bare.sitings(), bare.advised(),
            bare.pocket(), bare.refusal());
        return new SheetTask(record, PartsMade.NONE, SitingWater.of(water), BOAT.table(), HULL, SampleBoat.PROVENANCE);
    }

    private static String words(Sheet sheet) {
        return String.join(" ", Flattened.of(sheet).texts().stream().map(Text::words).toList());
    }

    private static Box bounds(View view, Layer layer) {
        return Flattened.of(view).on(layer).stream().map(Entity::bounds).reduce(Box::joinedWith).orElseThrow();
    }

    /** At 1:20 the line runs from 4.706 m before the after end to 2.206 m before it, 0.8 m to either side; the wake to port alone, from its forward edge to the after end. */
    @Test
    void exact_linesAndWakesWhereTheWaterHasThem() {
        SheetTask task = task(RunningWater.of(HULL, SEA, List.of(planes(24, 2), planes(30, 2.5))).over(List.of(INTAKE)));
        Sheet sheet = SheetSetter.set(task, SitingSheet::new);
        assertEquals("1:20", sheet.scale().words());
        assertEquals(List.of(), SheetClearance.faults(sheet, task.paper().frame()));
        View plan = sheet.views().stream().filter(view -> view.name().startsWith("BOTTOM PLAN")).findFirst().orElseThrow();
        double stern = bounds(plan, Layer.HULL).left();
        double centre = (bounds(plan, Layer.HULL).top() + bounds(plan, Layer.HULL).bottom()) / 2;
        Box lines = bounds(plan, Layer.WATER);
        assertEquals(4, Flattened.of(plan).on(Layer.WATER).size(), "two speeds, both sides");
        assertEquals(stern + 4706 / 20.0, lines.right(), 1e-6);
        assertEquals(stern + 2206 / 20.0, lines.left(), 1e-6);
        assertEquals(centre + 800 / 20.0, lines.top(), 1e-6);
        assertEquals(centre - 800 / 20.0, lines.bottom(), 1e-6);
        Box wake = bounds(plan, Layer.WAKE);
        assertEquals(stern, wake.left(), 1e-6);
        assertEquals(stern + 3706 / 20.0, wake.right(), 1e-6);
        assertEquals(centre - (400 - 3706 * Math.tan(Math.toRadians(6))) / 20, wake.top(), 1e-3);
        List<String> words = Flattened.of(plan).texts().stream().map(Text::words).toList();
        assertTrue(words.containsAll(List.of("24 kn", "30 kn", "wake of Intake")), words.toString());
        assertTrue(words(sheet).contains("WATER UNDER WAY"), words(sheet));
    }

    /** What is not known is said, and nothing stands for it. */
    @Test
    void law_speedsThatAreNotKnownAreSaid() {
        BottomWater water = RunningWater.of(HULL, SEA, List.of(planes(24, 2), at(40, new Attitude.NotKnown(20, Regime.OUTSIDE, "too fast")))).over(List.of(INTAKE));
        Sheet sheet = SheetSetter.set(task(water), SitingSheet::new);
        assertTrue(words(sheet).contains("How the water runs along the bottom is NOT KNOWN at fast, 40 kn: neither stagnation line nor"), words(sheet));
        assertTrue(!words(sheet).contains(" 40 kn wake"), words(sheet));
        Sheet untold = SheetSetter.set(task(BottomWater.UNTOLD), SitingSheet::new);
        assertTrue(words(untold).contains("How she runs is not told, or NOT KNOWN: neither stagnation lines nor wakes are drawn."), words(untold));
        assertTrue(Flattened.of(untold).on(Layer.WAKE).isEmpty() && Flattened.of(untold).on(Layer.WATER).isEmpty());
    }
}
