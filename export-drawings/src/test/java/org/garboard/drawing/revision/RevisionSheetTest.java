package org.garboard.drawing.revision;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.drawing.DrawnFiles;
import org.garboard.drawing.Flattened;
import org.garboard.drawing.Layer;
import org.garboard.drawing.LinearDimension;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.SheetClearance;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;
import org.garboard.drawing.lines.LinesBoats;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetFormat;
import org.garboard.drawing.sheets.SheetSubject;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;
import org.garboard.job.Chooser;
import org.garboard.job.DrawingWish;
import org.garboard.job.DrawingWish.Orientation;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Units;
import org.garboard.job.Issue;
import org.garboard.job.RecordedFigure;
import org.garboard.job.RecordedSet;
import org.garboard.job.RecordedSiting;
import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.Mount;
import org.garboard.offsets.OffsetTable;
import org.garboard.revision.Comparison;
import org.garboard.siting.MountSiting;
import org.garboard.siting.PlanPoint;
import org.garboard.siting.Region;
import org.garboard.siting.Site;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class RevisionSheetTest {
    private static final String HASH = "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08";
    private static final OffsetTable TABLE = LinesBoats.chine();
    private static final Hull HULL = Hull.through(TABLE);
    private static final Mount FLUSH = new FlushThroughHull();

    private static DrawnRecord record(String revision, String hash, double x, double y, double intake, Units units, Paper paper) {
        Site site = new Site(FLUSH, x, y, 0.1, y, 0.3, 0, List.of(), Optional.empty());
        Region region = new Region(List.of(new PlanPoint(x - 1, y - 0.05), new PlanPoint(x + 0.5, y - 0.05), new PlanPoint(x + 0.5, y + 0.1), new PlanPoint(x - 1, y + 0.1)), List.of(), 0.225);
        return new DrawnRecord(new RecordedSet("1.0", "Boat", "7", "offsets.csv", hash, 0.4,
            new BottomFeatures(List.of(new LaidFeature("Intake", "intake", Sides.PORT,
                List.of(Quad.of(intake, 0.5, intake + 0.2, 0.5, intake + 0.2, 0.6, intake, 0.6)), Optional.empty())), BottomFeatures.FeatureList.GIVEN),
            new DrawingWish(units, paper, DrawingWish.Orientation.LANDSCAPE, DrawingWish.Projection.FIRST_ANGLE, "N-1", "Owner", "Loft", "", "2026-03-14", revision),
            List.of(new RecordedSiting("Body", List.of(new MountSiting(FLUSH, List.of(region), List.of(site), Optional.empty())), Optional.of(FLUSH), "", Chooser.SEARCH)),
            List.of(new RecordedFigure("inputs, table offsets.csv", "sha256", hash), new RecordedFigure("transducer", "length_mm", "200.000"),
                new RecordedFigure("transducer", "width_mm", "100.000"), new RecordedFigure("drawing", "revision", revision))), TABLE, HULL);
    }

    private static RevisionTask task(DrawnRecord earlier, DrawnRecord later) {
        return new RevisionTask(earlier, later, Comparison.of(earlier.set(), later.set()), new Provenance("Garboard test", HASH));
    }

    private static DrawnRecord earlier(Units units, Paper paper) {
        return record("A", HASH, 4, 0.3, 3, units, paper);
    }

    private static DrawnRecord later(Units units, Paper paper) {
        return record("B", HASH, 4.25, 0.2, 3.5, units, paper);
    }

    /** 250 aft is 12.5 to the left at 1:20; 100 to port is 5 down. The body is 10 by 5. */
    @Test
    void exact_shiftsAreDimensionedAndBodiesDrawn() {
        View plan = RevisionPlan.of(task(earlier(Units.MILLIMETRES, Paper.A2), later(Units.MILLIMETRES, Paper.A2)), new Scale(20));
        List<LinearDimension> dimensions = plan.entities().stream().filter(LinearDimension.class::isInstance).map(LinearDimension.class::cast).toList();
        assertEquals(List.of("250 aft", "100 to port"), dimensions.stream().map(LinearDimension::words).toList());
        assertEquals(12.5, dimensions.get(0).measured(), 1e-9);
        assertEquals(5, dimensions.get(1).measured(), 1e-9);
        Polyline body = (Polyline) Flattened.of(plan).on(Layer.CUT).get(0);
        assertEquals(10, body.bounds().width(), 1e-9);
        assertEquals(5, body.bounds().height(), 1e-9);
        assertEquals((HULL.afterEnd() - 4.25) * 50, body.bounds().centre().x(), 1e-9);
        assertEquals(0.2 * 50, body.bounds().centre().y(), 1e-9);
        // dashed: the body, both sides of its region, the intake where it was
        assertEquals(4, Flattened.of(plan).on(Layer.HIDDEN).size());
    }

    /** Of a hull drawn from another table the lines are there twice, dashed as they were. */
    @Test
    void law_anotherHullIsDashed() {
        RevisionTask task = task(record("A", HASH.replace('9', '8'), 4, 0.3, 3, Units.MILLIMETRES, Paper.A2), record("B", HASH, 4, 0.3, 3, Units.MILLIMETRES, Paper.A2));
        Flattened plan = Flattened.of(RevisionPlan.of(task, new Scale(20)));
        long lines = plan.on(Layer.HULL).size();
        // and the body and both sides of its region, which lie on each other
        assertEquals(lines + 3, plan.on(Layer.HIDDEN).size());
        assertEquals(0, RevisionPlan.of(task, new Scale(20)).entities().stream().filter(LinearDimension.class::isInstance).count());
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void law_nothingOverlapsAndNothingLeavesTheFrame(Paper paper) {
        for (Orientation orientation : Orientation.values()) {
            assertReadable(paper, orientation);
        }
    }

    private static DrawnRecord lying(DrawnRecord record, Orientation orientation) {
        RecordedSet set = record.set();
        DrawingWish wish = set.drawing();
        DrawingWish other = new DrawingWish(wish.units(), wish.paper(), orientation, wish.projection(), wish.number(), wish.owner(), wish.creator(), wish.approver(),
            wish.date(), wish.revision(), List.of(new Issue(wish.revision(), wish.date(), "Loft", "Moved as the survey asked")));
        RecordedSiting siting = set.sitings().get(0);
        return new DrawnRecord(new RecordedSet(set.programVersion(), set.boat(), set.hullNumber(), set.tableFile(), set.tableHash(), set.draught(), set.features(),
            other, List.of(new RecordedSiting(siting.transducer(), siting.mounts(), siting.advised(), siting.answer(), Chooser.YARD)), set.figures()), record.table(), record.hull());
    }

    private static void assertReadable(Paper paper, Orientation orientation) {
        Units units = paper.name().startsWith("ANSI") ? Units.FEET_INCHES_EIGHTHS : Units.MILLIMETRES;
        List<Sheet> sheets = RevisionDrawing.of(lying(earlier(units, paper), orientation), lying(later(units, paper), orientation), new Provenance("Garboard test", HASH));
        for (Sheet sheet : sheets) {
            assertEquals(List.of(), SheetClearance.faults(sheet, SheetSubject.paper(paper, orientation).frame()), paper + " " + orientation);
        }
        String words = String.join(" ", sheets.stream().flatMap(sheet -> Flattened.of(sheet).texts().stream()).map(Text::words).toList());
        assertTrue(words.contains("TABLE OF REVISIONS") && words.contains("250 mm aft") && words.contains("100 mm to port"), words);
        assertTrue(words.contains("Moved as the survey asked") && words.contains("GIVEN BY THE YARD") && !words.contains("at its advised"), words);
    }

    @Test
    void exact_filesKeepEveryRuleAndOutsideReadersTakeThem(@TempDir Path folder) throws IOException {
        List<Sheet> sheets = RevisionDrawing.of(earlier(Units.FEET_INCHES_EIGHTHS, Paper.ANSI_C), later(Units.FEET_INCHES_EIGHTHS, Paper.ANSI_C), new Provenance("Garboard test", HASH));
        assertEquals(1, sheets.size());
        DrawnFiles.assertTaken(folder, "moved", RevisionDrawing.MARK, SheetFormat.DXF.drawing("moved", sheets.get(0)).content(),
            SheetFormat.SVG.drawing("moved", sheets.get(0)).content());
    }
}
