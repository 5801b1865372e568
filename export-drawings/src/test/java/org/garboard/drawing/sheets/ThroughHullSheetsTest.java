package org.garboard.drawing.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeSet;
import java.util.stream.Collectors;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.Transducer;
import org.garboard.cutout.fairing.FairingBlock;
import org.garboard.cutout.fairing.FairingCut;
import org.garboard.cutout.fairing.FairingWish;
import org.garboard.cutout.flush.FlushCut;
import org.garboard.cutout.made.PartsMade;
import org.garboard.cutout.part.ThroughHullWish;
import org.garboard.drawing.AngularDimension;
import org.garboard.drawing.Dimension;
import org.garboard.drawing.Flattened;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.SheetClearance;
import org.garboard.drawing.Text;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Units;
import org.garboard.job.SitingRecord;
import org.garboard.siting.Site;
import org.garboard.skin.Layup;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Cutout and blocks in a bottom that is a wedge of 20 degrees where they are, so that every figure follows by hand. */
class ThroughHullSheetsTest {
    private static final SampleBoat BOAT = new SampleBoat(6.706, 11);
    private static final Hull HULL = Hull.through(BOAT.table());
    private static final double SKIN = 0.012;
    private static final double DEADRISE = Math.toRadians(20);

    private static SheetTask flush(DrawingWish wish, Transducer body, Optional<Layup> skin) throws Exception {
        SitingRecord record = BOAT.record(wish, body, 8);
        Site site = record.advised().orElseThrow().sites().get(0);
        return task(record, PartsMade.of(FlushCut.cut(HULL, body, ThroughHullWish.of(skin), site.x(), site.y())));
    }

    private static SheetTask fairing(DrawingWish wish) throws Exception {
        SitingRecord record = BOAT.record(wish, SampleBoat.slab(), 8);
        Site site = record.advised().orElseThrow().sites().get(0);
        ThroughHullWish through = ThroughHullWish.of(Optional.of(new Layup.Whole(SKIN)));
        return task(record, PartsMade.of(FairingCut.cut(HULL, SampleBoat.slab(), FairingWish.of(through), 0.05, site.x(), site.y())));
    }

    private static SheetTask task(SitingRecord record, PartsMade made) {
        return new SheetTask(record, made, SitingWater.NONE, BOAT.table(), HULL, SampleBoat.PROVENANCE);
    }

    private static DrawingWish wish(Units units, Paper paper) {
        return SampleBoat.wish(units, paper, "Yard");
    }

    private static List<Dimension> dimensions(Sheet sheet) {
        return sheet.views().stream().flatMap(view -> view.entities().stream()).filter(Dimension.class::isInstance).map(Dimension.class::cast).toList();
    }

    private static TreeSet<String> figures(Sheet sheet) {
        return dimensions(sheet).stream().map(Dimension::words).collect(Collectors.toCollection(TreeSet::new));
    }

    private static String text(Sheet sheet) {
        return Flattened.of(sheet).texts().stream().map(Text::words).collect(Collectors.joining(" "));
    }

    /** 300 x 150 x 42 in bedding of 2.5; the block's roof 10 over the body's top, so 42 + 10 - 12 thick beside it. */
    @Test
    void exact_figuresOfACutout() throws Exception {
        SheetTask task = flush(wish(Units.MILLIMETRES, Paper.A2), SampleBoat.slab(), Optional.of(new Layup.Whole(SKIN)));
        Sheet sheet = SheetSetter.set(task, CutoutSheet::new);
        assertEquals(new TreeSet<>(List.of("155", "305", "12", "40", "20.0°")), figures(sheet));
        AngularDimension axis = dimensions(sheet).stream().filter(AngularDimension.class::isInstance).map(AngularDimension.class::cast).findFirst().orElseThrow();
        Vector3D hole = task.made().flush().orElseThrow().axis();
        assertEquals(Math.atan2(-hole.getY(), hole.getZ()), axis.measured(), 1e-8, "the keel there is level within 1e-4, which turns the section's plane");
        String text = text(sheet);
        // the saw for 32 + 1.5; corners of 30 + 2.5, so their centres 305 / 2 - 32.5 and 155 / 2 - 32.5 from the middle
        for (String told : List.of("R32.5", "Ø35", "+1/0", "120 fwd and aft, 45 port and starboard", "20.0°, 364 in 1000", "20.0°, inner end to port",
                "30 or more", "40, 40")) {
            assertTrue(text.contains(told), told + " in " + text);
        }
    }

    /** A round body makes a round hole, by its saw's diameter. */
    @Test
    void exact_roundBodyRoundHole() throws Exception {
        Transducer button = new Transducer("Button 76, invented", 0.076, 0.076, 0.030, 0.038, 0.050, Angle.ofDegrees(20));
        SheetTask task = flush(wish(Units.MILLIMETRES, Paper.A3), button, Optional.of(new Layup.Whole(SKIN)));
        Sheet sheet = SheetSetter.set(task, CutoutSheet::new);
        String text = text(sheet);
        assertTrue(text.contains("Ø81") && !text.contains("corners"), text);
        assertTrue(text.contains("The element leans TO PORT, towards the keel. Turned round the beam is 40.0° off plumb."), text);
    }

    /** Where the skin is not told, the cutout stands and what hangs on the skin is not known. */
    @Test
    void exact_skinNotTold() throws Exception {
        SheetTask task = flush(wish(Units.MILLIMETRES, Paper.A3), SampleBoat.slab(), Optional.empty());
        Sheet sheet = SheetSetter.set(task, CutoutSheet::new);
        assertEquals(new TreeSet<>(List.of("155", "305")), figures(sheet));
        assertTrue(text(sheet).contains("20.0°, inner end to port"));
        assertTrue(text(sheet).contains("skin not told: NOT KNOWN"));
    }

    /** A hole square to the face is plumb athwart and 1 degree off it fore and aft, and in the skin an ellipse longer by 1 / (cos 1 deg cos 20 deg). */
    @Test
    void exact_fairingBlocksHoles() throws Exception {
        SheetTask task = fairing(wish(Units.MILLIMETRES, Paper.A2));
        FairingBlock block = task.made().fairing().orElseThrow();
        Sheet sheet = SheetSetter.set(task, CutoutSheet::new);
        String text = text(sheet);
        assertTrue(text.contains("Axis plumb"), text);
        assertTrue(text.contains("an ellipse, 35 x " + Figures.tenths(35 / Math.cos(DEADRISE) / Math.cos(Math.toRadians(FairingWish.TRAILING_EDGE_LOWER_DEG)))), text);
        TreeSet<String> expected = new TreeSet<>(List.of("35", Figures.tenths(1000 * Math.abs(block.bolt())), Figures.tenths(1000 * Math.abs(block.pin()))));
        assertEquals(expected, figures(sheet));
    }

    /** The block of a flush body is a plate 40 thick, 10 of them over the body, sawn square. */
    @Test
    void exact_figuresOfABackingBlock() throws Exception {
        SheetTask task = flush(wish(Units.MILLIMETRES, Paper.A2), SampleBoat.slab(), Optional.of(new Layup.Whole(SKIN)));
        Sheet sheet = SheetSetter.set(task, BlockSheet::new);
        // 40 beyond the opening all round
        assertEquals(new TreeSet<>(List.of("385", "235", "40", "305", "155", "30")), figures(sheet));
        String text = text(sheet);
        for (String told : List.of("Table tilted, cut along the block 0.0°", "Left over the body, round the stem 10", "Cut at the stem 40", "Ø35",
                "Recess for the body, and its depth from the cut 305 x 155, R32.5; 30", "Block's outline 385 x 235, R72.5")) {
            assertTrue(text.contains(told), told + " in " + text);
        }
    }

    /** A body as round at its ends as wide, 30 + 2.5 round them: centres 100 / 2 - 30 from the middle; in a plane no tilt to be turned round. */
    @Test
    void exact_roundEnds() throws Exception {
        Transducer long100 = new Transducer("Round-ended 100, invented", 0.100, 0.060, 0.030, 0.030, 0.020, Angle.ofDegrees(0));
        SheetTask task = flush(wish(Units.MILLIMETRES, Paper.A2), long100, Optional.of(new Layup.Whole(SKIN)));
        assertTrue(text(SheetSetter.set(task, CutoutSheet::new)).contains("Its round ends' centres, from E 20 fwd and aft R32.5"));
        assertFalse(text(SheetSetter.set(task, BlockSheet::new)).contains("turned round there"));
    }

    /** A body 20 high in a skin of 24: a lip of its outline 4 high, and a blank that holds it, 19 for a block of 15. */
    @Test
    void exact_lipOfABackingBlock() throws Exception {
        Transducer low = new Transducer("Low button 76, invented", 0.076, 0.076, 0.020, 0.038, 0.030, Angle.ofDegrees(0));
        SheetTask task = flush(wish(Units.MILLIMETRES, Paper.A3), low, Optional.of(new Layup.Whole(0.024)));
        Sheet sheet = SheetSetter.set(task, BlockSheet::new);
        String text = text(sheet);
        for (String told : List.of("Cut at the stem 15", "Blank, height, the lip in it 19", "Lip to saw round, and its height from the cut Ø76; 4", "Left over the body, round the stem 19")) {
            assertTrue(text.contains(told), told + " in " + text);
        }
        assertTrue(figures(sheet).containsAll(List.of("76", "4", "15")), figures(sheet).toString());
        assertEquals(List.of(), SheetClearance.faults(sheet, task.paper().frame()));
    }

    /** A fairing block's sides differ by its width times the deadrise's tangent, and the saw's table stands at the deadrise. */
    @Test
    void exact_fairingBlocksSides() throws Exception {
        SheetTask task = fairing(wish(Units.MILLIMETRES, Paper.A2));
        FairingBlock block = task.made().fairing().orElseThrow();
        List<Sheet> pages = SheetSetter.pages(task, BlockSheet::new);
        String text = pages.stream().map(ThroughHullSheetsTest::text).collect(Collectors.joining(" "));
        assertTrue(text.contains("20.0°, higher to starboard"), text);
        // 300 x 150 x 42 in bedding of 2.5
        for (String told : List.of("Recess for the body, and its depth from the face 305 x 155, R32.5; 42", "Saw's kerf, in the blank's height 3",
                "on the block's middle line", "turned round there")) {
            assertTrue(text.contains(told), told + " in " + text);
        }
        double middle = block.height();
        double rise = block.width() / 2 * Math.tan(DEADRISE);
        for (double side : List.of(middle - rise, middle + rise)) {
            assertTrue(pages.stream().flatMap(page -> figures(page).stream()).anyMatch(Figures.tenths(1000 * side)::equals), side + " in " + text);
        }
    }

    @ParameterizedTest
    @EnumSource(value = Paper.class, names = {"A3", "ANSI_A"})
    void law_everySheetCanBeRead(Paper paper) throws Exception {
        for (Units units : Units.values()) {
            for (SheetTask task : List.of(flush(wish(units, paper), SampleBoat.slab(), Optional.of(new Layup.Whole(SKIN))), fairing(wish(units, paper)))) {
                for (List<Sheet> pages : List.of(SheetSetter.pages(task, CutoutSheet::new), SheetSetter.pages(task, BlockSheet::new))) {
                    pages.forEach(page -> assertEquals(List.of(), SheetClearance.faults(page, task.paper().frame()), paper + " " + units));
                }
            }
        }
    }
}
