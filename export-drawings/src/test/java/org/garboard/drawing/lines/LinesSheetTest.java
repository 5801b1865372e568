package org.garboard.drawing.lines;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import org.garboard.drawing.Flattened;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.DrawnFiles;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.SheetClearance;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.DoesNotFit;
import org.garboard.drawing.sheets.DrawnSet;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetFormat;
import org.garboard.drawing.sheets.SheetSetter;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Projection;
import org.garboard.job.DrawingWish.Units;
import org.garboard.lines.DrawnLine;
import org.garboard.offsets.OffsetTable;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class LinesSheetTest {
    private static final Provenance PROVENANCE = new Provenance("Garboard test", "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08");
    private static final List<DrawnLine.Diagonal> DIAGONALS = List.of(new DrawnLine.Diagonal(0.6, Angle.ofDegrees(40)),
            new DrawnLine.Diagonal(0.3, Angle.ofDegrees(25)));

    private static DrawingWish drawing(Units units, Paper paper, Projection projection) {
        return new DrawingWish(units, paper, DrawingWish.Orientation.LANDSCAPE, projection, "", "", "", "", "", "");
    }

    private static LinesTask task(OffsetTable table, Units units, Paper paper) {
        LinesWish wish = new LinesWish(drawing(units, paper, Projection.FIRST_ANGLE), List.of(), List.of(), List.of(), DIAGONALS);
        return new LinesTask(table, Hull.through(table), wish, "offsets.csv", PROVENANCE);
    }

    private static List<String> words(View view) {
        return Flattened.of(view).texts().stream().map(Text::words).toList();
    }

    private static View view(Sheet sheet, String name) {
        return sheet.views().stream().filter(view -> view.name().startsWith(name)).findFirst().orElseThrow();
    }

    /** Every paper, both units, a boat with a bow and a transom and one with two ends: all of it clear, or a larger paper named. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void law_nothingOverlapsAndNothingLeavesTheFrame(Paper paper) {
        for (OffsetTable table : List.of(LinesBoats.chine(), LinesBoats.doubleEnded())) {
            for (Units units : Units.values()) {
                LinesTask task = task(table, units, paper);
                assertClear(task, LinesSheet::new, paper + " " + units);
            }
        }
    }

    static void assertClear(LinesTask task, SheetSetter.Maker<LinesTask> maker, String what) {
        try {
            Sheet sheet = SheetSetter.set(task, maker);
            assertEquals(List.of(), SheetClearance.faults(sheet, task.paper().frame()), what);
        } catch (DoesNotFit refusal) {
            assertTrue(refusal.remedy().matches("choose the paper (A[123]|ANSI [BCD]), which holds them"),
                    what + ": " + refusal.getMessage());
        }
    }

    @Test
    void exact_gridIsNamedInEveryView() {
        Sheet sheet = SheetSetter.set(task(LinesBoats.chine(), Units.MILLIMETRES, Paper.A1), LinesSheet::new);
        assertTrue(words(view(sheet, "PROFILE")).containsAll(List.of("Base line", "WL 300", "WL 900", "B 300", "B 600",
                "0: 0", "6: 6000", "Keel", "Chine", "Sheer")), words(view(sheet, "PROFILE")).toString());
        assertTrue(words(view(sheet, "HALF-BREADTH")).containsAll(List.of("CL", "WL 300", "WL 900", "B 300", "B 600", "Chine",
                "Sheer", "D1", "D2")), words(view(sheet, "HALF-BREADTH")).toString());
        assertTrue(words(view(sheet, "BODY PLAN")).containsAll(List.of("CL", "Base line", "WL 300", "B 300", "0: 0", "6: 6000",
                "D1", "D2")), words(view(sheet, "BODY PLAN")).toString());
        String notes = String.join(" ", sheet.furniture().stream().filter(Text.class::isInstance)
                .map(entity -> ((Text) entity).words()).toList());
        assertTrue(notes.contains("D1: diagonal from the centreline 600 above the base line"), notes);
        assertTrue(notes.contains("FOR CHECK - drawn from a table of offsets, not from this boat"), notes);
    }

    /** The bow is to the right: the profile's highest point of the keel line stands at its right end. */
    @Test
    void law_bowIsToTheRight() {
        Sheet sheet = SheetSetter.set(task(LinesBoats.chine(), Units.MILLIMETRES, Paper.A1), LinesSheet::new);
        View profile = view(sheet, "PROFILE");
        Text bow = text(profile, "0: 0");
        assertTrue(bow.middle().x() > text(profile, "6: 6000").middle().x());
        assertEquals(bow.middle().x(), text(profile, "3: 3000").middle().x()
                + sheet.scale().paper(3), 1e-6);
        View body = view(sheet, "BODY PLAN");
        assertTrue(text(body, "0: 0").middle().x() > text(body, "CL").middle().x());
        assertTrue(text(body, "6: 6000").middle().x() < text(body, "CL").middle().x());
    }

    private static Text text(View view, String words) {
        return Flattened.of(view).texts().stream().filter(text -> text.words().equals(words)).findFirst().orElseThrow();
    }

    /** Buttock 300 from the centreline crosses the flat V of slope 1 in 4, keel level, at 75 above base. */
    @Test
    void exact_buttockInTheProfileOfAPrism() {
        OffsetTable table = LinesBoats.prism();
        LinesWish wish = new LinesWish(drawing(Units.MILLIMETRES, Paper.A1, Projection.FIRST_ANGLE), List.of(), List.of(0.3),
                List.of(), List.of());
        Sheet sheet = SheetSetter.set(new LinesTask(table, Hull.through(table), wish, "offsets.csv", PROVENANCE), LinesSheet::new);
        View profile = view(sheet, "PROFILE");
        List<Polyline> curves = Flattened.of(profile).on(Layer.FORM).stream().map(Polyline.class::cast).toList();
        assertEquals(1, curves.size());
        double base = Flattened.of(profile).on(Layer.GRID).stream().map(Line.class::cast)
                .filter(line -> line.from().y() == line.to().y()).mapToDouble(line -> line.from().y()).min().orElseThrow();
        curves.get(0).vertices().forEach(vertex -> assertEquals(sheet.scale().paper(0.075), vertex.at().y() - base, 1e-6));
    }

    /** The view from above stands below the profile in first angle and above it in third (ISO 5456-2). */
    @Test
    void exact_viewsStandAsTheProjectionSays() {
        for (Projection projection : Projection.values()) {
            OffsetTable table = LinesBoats.chine();
            LinesWish wish = new LinesWish(drawing(Units.MILLIMETRES, Paper.A2, projection), List.of(), List.of(), List.of(), List.of());
            Sheet sheet = SheetSetter.set(new LinesTask(table, Hull.through(table), wish, "offsets.csv", PROVENANCE), LinesSheet::new);
            boolean planBelow = view(sheet, "HALF-BREADTH").frame().top() < view(sheet, "PROFILE").frame().bottom();
            assertEquals(projection == Projection.FIRST_ANGLE, planBelow);
        }
    }

    /** A table of keel, chine and sheer alone: round steps, as many as can be read. */
    @Test
    void exact_evenGridWhereTheTableHasNone() {
        Sheet sheet = SheetSetter.set(task(LinesBoats.prism(), Units.MILLIMETRES, Paper.A1), LinesSheet::new);
        List<String> body = words(view(sheet, "BODY PLAN"));
        assertTrue(body.containsAll(List.of("B 250", "B 500", "B 750", "B 1000", "WL 200", "WL 400", "WL 1000")), body.toString());
    }

    @Test
    void exact_fileKeepsEveryRuleAndOutsideReadersTakeIt(@TempDir Path folder) throws IOException {
        DrawnFiles.assertTaken(folder, "lines", LinesDrawing.MARK, drawn(SheetFormat.DXF), drawn(SheetFormat.SVG));
    }

    private static byte[] drawn(SheetFormat format) {
        OffsetTable table = LinesBoats.chine();
        LinesWish wish = new LinesWish(drawing(Units.FEET_INCHES_EIGHTHS, Paper.ANSI_C, Projection.THIRD_ANGLE), List.of(),
                List.of(), List.of(), DIAGONALS);
        DrawnSet set = LinesDrawing.lines(table, Hull.faired(table), wish, "offsets.csv", PROVENANCE, format);
        assertEquals(List.of(), set.refusals());
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
    void anA4IsEnough() {
        OffsetTable table = LinesBoats.chine();
        LinesWish wish = new LinesWish(drawing(Units.MILLIMETRES, Paper.A4, Projection.FIRST_ANGLE), List.of(), List.of(), List.of(), DIAGONALS);
        DrawnSet set = LinesDrawing.lines(table, Hull.through(table), wish, "offsets.csv", PROVENANCE, SheetFormat.SVG);
        assertEquals(List.of(), set.refusals());
        assertEquals(1, set.drawings().size());
    }
}
