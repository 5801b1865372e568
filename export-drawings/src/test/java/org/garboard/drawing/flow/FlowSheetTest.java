package org.garboard.drawing.flow;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.craft.Sides;
import org.garboard.drawing.Flattened;
import org.garboard.drawing.Hatch;
import org.garboard.drawing.Layer;
import org.garboard.drawing.DrawnFiles;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.SheetClearance;
import org.garboard.drawing.Text;
import org.garboard.drawing.layout.DoesNotFit;
import org.garboard.drawing.lines.LinesBoats;
import org.garboard.drawing.sheets.DrawnSet;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetFormat;
import org.garboard.drawing.sheets.SheetSetter;
import org.garboard.drawing.water.PlanArea;
import org.garboard.drawing.water.PlanCurve;
import org.garboard.flow.doublebody.DoubleBody;
import org.garboard.flow.doublebody.HullFlow;
import org.garboard.flow.doublebody.MeshWish;
import org.garboard.flow.doublebody.Stern;
import org.garboard.flow.shadow.AlongStreams;
import org.garboard.flow.shadow.CleanWater;
import org.garboard.flow.shadow.PlanRegion;
import org.garboard.flow.shadow.Shadow;
import org.garboard.flow.shadow.ShadowCaster;
import org.garboard.flow.shadow.Shedder;
import org.garboard.flow.shadow.Sheds;
import org.garboard.flow.streams.HullStreams;
import org.garboard.flow.streams.SweepDown;
import org.garboard.geometry.Ring;
import org.garboard.hull.Hull;
import org.garboard.hydrostatics.WaterSurface;
import org.garboard.job.DrawingWish;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Projection;
import org.garboard.job.DrawingWish.Units;
import org.garboard.offsets.OffsetTable;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class FlowSheetTest {
    private static final Provenance PROVENANCE = new Provenance("Garboard test", "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08");
    private static final OffsetTable TABLE = LinesBoats.chine();
    private static final Hull HULL = Hull.through(TABLE);
    private static FlowPicture picture;

    @BeforeAll
    static void flow() {
        HullStreams streams = new HullStreams(assertInstanceOf(HullFlow.class,
            DoubleBody.past(HULL, WaterSurface.level(0.38), MeshWish.atMost(800, Stern.STRAIGHT_RUN))));
        List<PlanCurve> curves = new ArrayList<>(StreamCurves.through(streams, 4, 9));
        curves.addAll(StreamCurves.sweptDown(SweepDown.of(streams, 0.1)));
        ShadowCaster caster = new ShadowCaster(HULL, new AlongStreams(streams), 1);
        List<Shadow> shadows = new ArrayList<>();
        for (Shedder feature : List.of(Shedder.point("drain", Sheds.FLUSH, Sides.STARBOARD, 2.2, 0.3, 0.05),
                Shedder.box("thruster tunnel", Sheds.TUNNEL, Sides.BOTH, 1.5, 0.15, 0.2, 0.05),
                Shedder.box("propeller", Sheds.PROPELLER, Sides.BOTH, 5.6, 0.55, 0.1, 0.3))) {
            shadows.add(assertInstanceOf(Shadow.class, caster.of(feature)));
        }
        List<PlanArea> areas = new ArrayList<>(List.of(
            new PlanArea(PlanArea.Kind.SPRAY, box(0.9, 1.2, 0.1, 0.5)), new PlanArea(PlanArea.Kind.SPRAY, box(0.9, 1.2, 0.1, 0.5).mirrored()),
            new PlanArea(PlanArea.Kind.AIR, box(4.2, 5, 0, 0.6), "air behind step 4: its end NOT KNOWN")));
        CleanWater.of(List.of(box(1.2, 4.2, 0, 0.6)), shadows).forEach(clean -> areas.add(new PlanArea(PlanArea.Kind.CLEAN, clean, "clean")));
        picture = new FlowPicture("At 6.0 kn, level, water 380 above base", curves, areas, shadows,
            List.of("Level water: the flow of a boat that goes slowly for her length."));
    }

    private static PlanRegion box(double from, double to, double inner, double outer) {
        return new PlanRegion(new Ring(List.of(Vector2D.of(from, inner), Vector2D.of(to, inner), Vector2D.of(to, outer), Vector2D.of(from, outer))), List.of());
    }

    private static DrawingWish wish(Units units, Paper paper) {
        return new DrawingWish(units, paper, DrawingWish.Orientation.LANDSCAPE, Projection.FIRST_ANGLE, "", "", "", "", "", "");
    }

    private static FlowTask task(Units units, Paper paper) {
        return new FlowTask(TABLE, HULL, picture, wish(units, paper), "offsets.csv", PROVENANCE);
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void law_nothingOverlapsAndNothingLeavesTheFrame(Paper paper) {
        for (Units units : Units.values()) {
            FlowTask task = task(units, paper);
            try {
                Sheet sheet = SheetSetter.set(task, FlowSheet::new);
                assertEquals(List.of(), SheetClearance.faults(sheet, task.paper().frame()), paper + " " + units);
            } catch (DoesNotFit refusal) {
                assertTrue(refusal.remedy().matches("choose the paper (A[123]|ANSI [BCD]), which holds them"), paper + ": " + refusal.getMessage());
            }
        }
    }

    @Test
    void exact_everyFeatureIsNamedAndHatched() {
        Sheet sheet = SheetSetter.set(task(Units.MILLIMETRES, Paper.A3), FlowSheet::new);
        Flattened view = Flattened.of(sheet.views().get(0));
        List<String> words = view.texts().stream().map(Text::words).toList();
        assertTrue(words.containsAll(List.of("drain", "thruster tunnel", "propeller", "STBD", "PORT", "FWD", "clean", "air behind step 4: its end NOT KNOWN",
            "BOTTOM PLAN SEEN FROM BELOW: STARBOARD IS UP", "At 6.0 kn, level, water 380 above base")), words.toString());
        // the wakes of the drain, of both mouths of the tunnel, which meet, and of two propellers; two ahead of these
        // and of spray on both sides and of air; what is clean is an outline
        assertEquals(9, view.on(Layer.HATCH).stream().filter(Hatch.class::isInstance).count());
        assertEquals(18, view.on(Layer.FORM).size(), "nine streamlines, both sides");
        assertEquals(20, view.on(Layer.ADJACENT).size(), "ten of the upper water, both sides");
        String notes = String.join(" ", sheet.furniture().stream().filter(Text.class::isInstance).map(entity -> ((Text) entity).words()).toList());
        assertTrue(notes.contains("The wake of drain is taken to fade over 5.0 m (our choice)."), notes);
        assertTrue(notes.contains("advisory edge of a wake") && notes.contains("wetted by spray alone") && notes.contains("air behind a step and its margin: no site")
            && notes.contains("clean: solid water, no listed wake"), notes);
        assertTrue(view.on(Layer.SECTION).size() >= 1, "what is clean");
    }

    /** Starboard is up and the bow right. */
    @Test
    void law_drainOfStarboardIsAboveTheCentreline() {
        Sheet sheet = SheetSetter.set(task(Units.MILLIMETRES, Paper.A3), FlowSheet::new);
        Flattened view = Flattened.of(sheet.views().get(0));
        double starboard = view.texts().stream().filter(text -> text.words().equals("STBD")).findFirst().orElseThrow().middle().y();
        double port = view.texts().stream().filter(text -> text.words().equals("PORT")).findFirst().orElseThrow().middle().y();
        // after those of spray and air
        Hatch drain = view.on(Layer.HATCH).stream().filter(Hatch.class::isInstance).map(Hatch.class::cast).skip(3).findFirst().orElseThrow();
        double middle = 0.5 * (starboard + port);
        assertTrue(starboard > port && drain.bounds().bottom() > middle, "the drain's shadow is on the starboard half");
        double fwd = view.texts().stream().filter(text -> text.words().equals("FWD")).findFirst().orElseThrow().middle().x();
        assertTrue(fwd > drain.bounds().right());
    }

    @Test
    void exact_fileKeepsEveryRuleAndOutsideReadersTakeIt(@TempDir Path folder) throws IOException {
        DrawnFiles.assertTaken(folder, "flow", FlowDrawing.MARK, drawn(SheetFormat.DXF), drawn(SheetFormat.SVG));
    }

    private static byte[] drawn(SheetFormat format) {
        DrawnSet set = FlowDrawing.bottomPlan("flow-6kn", TABLE, HULL, picture, wish(Units.MILLIMETRES, Paper.A3), "offsets.csv",
            PROVENANCE, format);
        assertEquals(List.of(), set.refusals());
        assertEquals("flow-6kn" + format.ending(), set.drawings().get(0).fileName());
        return set.drawings().get(0).content();
    }

    @Test
    void law_sameBytesOnAnyLocale() {
        byte[] first = drawn(SheetFormat.SVG);
        Locale before = Locale.getDefault();
        try {
            for (String tag : List.of("tr-TR", "ar-EG-u-nu-arab")) {
                Locale.setDefault(Locale.forLanguageTag(tag));
                assertArrayEquals(first, drawn(SheetFormat.SVG));
            }
        } finally {
            Locale.setDefault(before);
        }
    }

    @Test
    void aCurveOfOnePointIsRefused() {
        assertEquals("a stagnation line of 1 point(s); two are the least", assertThrows(IllegalArgumentException.class,
            () -> new PlanCurve(PlanCurve.Kind.STAGNATION_LINE, List.of(Vector2D.of(1, 0)))).getMessage());
    }
}
