package org.garboard.drawing.lines;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.garboard.drawing.Flattened;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.Text;
import org.garboard.drawing.dxf.SheetDxfRules;
import org.garboard.drawing.sheets.Provenance;
import org.garboard.drawing.sheets.SheetFormat;
import org.garboard.drawing.sheets.SheetSetter;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Projection;
import org.garboard.job.DrawingWish.Units;
import org.garboard.lines.Comb;
import org.garboard.lines.DrawnLine;
import org.garboard.lines.Tooth;
import org.garboard.offsets.OffsetTable;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class CombSheetTest {
    private static final Provenance PROVENANCE = new Provenance("Garboard test", "9f86d081884c7d659a2feaa0c55ad015a3bf4f1b2b0b822cd15d6c15b0f00a08");

    private static DrawingWish drawing(Units units, Paper paper) {
        return new DrawingWish(units, paper, DrawingWish.Orientation.LANDSCAPE, Projection.FIRST_ANGLE, "", "", "", "", "", "");
    }

    private static LinesTask task(OffsetTable table, Units units, Paper paper) {
        return new LinesTask(table, Hull.through(table), new LinesWish(drawing(units, paper), List.of(), List.of(), List.of(), List.of()),
                "offsets.csv", PROVENANCE);
    }

    private static List<DrawnLine> lines(Hull hull) {
        return List.of(new DrawnLine.Named(hull.keel()), new DrawnLine.Named(hull.lines().get(1)), new DrawnLine.Buttock(0.4),
                new DrawnLine.Section(2.3), new DrawnLine.Waterline(0.5), new DrawnLine.Diagonal(0.7, Angle.ofDegrees(35)));
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void law_nothingOverlapsAndNothingLeavesTheFrame(Paper paper) {
        for (OffsetTable table : List.of(LinesBoats.chine(), LinesBoats.doubleEnded(), LinesBoats.prism())) {
            for (Units units : Units.values()) {
                LinesTask task = task(table, units, paper);
                for (DrawnLine line : lines(task.hull())) {
                    LinesSheetTest.assertClear(task, each -> new CombSheet(each, line), paper + " " + units + " " + line);
                }
            }
        }
    }

    /** On the sheet each tooth is as long as the sheet's words say: 10 mm for the round curvature beside the bar. */
    @Test
    void exact_teethAreAsLongAsTheScaleSays() {
        LinesTask task = task(LinesBoats.chine(), Units.MILLIMETRES, Paper.A2);
        DrawnLine line = new DrawnLine.Named(task.hull().keel());
        Sheet sheet = SheetSetter.set(task, each -> new CombSheet(each, line));
        String bar = sheet.furniture().stream().filter(Text.class::isInstance).map(entity -> ((Text) entity).words())
                .filter(words -> words.startsWith("tooth of 10 mm")).findFirst().orElseThrow();
        double perTen = Double.parseDouble(bar.replaceAll(".*curvature ([0-9.]+) 1/m.*", "$1"));
        List<Tooth> teeth = Comb.of(task.hull(), line, sheet.scale().trueMm(2) / 1000).get(0).branches().get(0).stream()
                .filter(tooth -> tooth.curvature() / perTen * 10 > 0.01).toList();
        List<Line> drawn = Flattened.of(sheet.views().get(0)).on(Layer.DIM).stream().map(Line.class::cast).toList();
        assertEquals(teeth.size(), drawn.size());
        for (int i = 0; i < drawn.size(); i++) {
            assertEquals(teeth.get(i).curvature() / perTen * 10, drawn.get(i).from().distanceTo(drawn.get(i).to()), 1e-9);
        }
        double longest = drawn.stream().mapToDouble(tooth -> tooth.from().distanceTo(tooth.to())).max().orElseThrow();
        assertTrue(longest <= 40 && longest > 16 - 1e-9, "longest " + longest);
    }

    @Test
    void exact_scalesAreRoundNumbers() {
        assertEquals("0.02 1/m, radius 50 m", CombScale.words(0.02, task(LinesBoats.prism(), Units.MILLIMETRES, Paper.A2).figures()));
        assertEquals("0.02 1/m, radius 50 m (164'-0 1/2\")",
                CombScale.words(0.02, task(LinesBoats.prism(), Units.FEET_INCHES_EIGHTHS, Paper.A2).figures()));
    }

    /** Straight lines have a picture too, and words that say so. */
    @Test
    void exact_aStraightLineIsCalledStraight() {
        LinesTask task = task(LinesBoats.prism(), Units.MILLIMETRES, Paper.A2);
        Sheet sheet = SheetSetter.set(task, each -> new CombSheet(each, new DrawnLine.Named(task.hull().lines().get(1))));
        String words = String.join(" ", Flattened.of(sheet).texts().stream().map(Text::words).toList());
        assertTrue(words.contains("In profile it is straight throughout."), words);
    }

    @Test
    void exact_fileKeepsEveryRule() {
        OffsetTable table = LinesBoats.chine();
        Hull hull = Hull.faired(table);
        for (DrawnLine line : lines(hull)) {
            assertEquals(List.of(), SheetDxfRules.broken(LinesDrawing.comb(table, hull, line, drawing(Units.MILLIMETRES, Paper.A3),
                    "offsets.csv", PROVENANCE, SheetFormat.DXF).drawings().get(0).content()), line.toString());
        }
    }
}
