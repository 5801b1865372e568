package org.garboard.drawing.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.BottomFeatures.FeatureList;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.drawing.Box;
import org.garboard.drawing.Circle;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Flattened;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.SheetClearance;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;
import org.garboard.drawing.layout.DoesNotFit;
import org.garboard.geometry.Quad;
import org.garboard.hull.Fit;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish.Orientation;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Projection;
import org.garboard.job.DrawingWish.Units;
import org.garboard.job.SitingRecord;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class SitingSheetTest {

    private static final SampleBoat SHORT = new SampleBoat(6.706, 11);
    private static final SampleBoat LONG = new SampleBoat(11.9, 13);

    private static SheetTask task(SampleBoat boat, Units units, Paper paper) {
        return new SheetTask(boat.record(units, paper), boat.table(), Hull.through(boat.table()), SampleBoat.PROVENANCE);
    }

    private static Sheet sheet(SampleBoat boat, Units units, Paper paper) {
        return SheetSetter.set(task(boat, units, paper), SitingSheet::new);
    }

    private static List<String> words(Sheet sheet) {
        return Flattened.of(sheet).texts().stream().map(Text::words).toList();
    }

    /** Every paper, both units, two boats: either all of it stands clear, or a larger paper is named. */
    @ParameterizedTest
    @EnumSource(Paper.class)
    void law_nothingOverlapsAndNothingLeavesTheFrame(Paper paper) {
        for (SampleBoat boat : List.of(SHORT, LONG)) {
            for (Units units : Units.values()) {
                SheetTask task = task(boat, units, paper);
                try {
                    Sheet sheet = SheetSetter.set(task, SitingSheet::new);
                    assertEquals(List.of(), SheetClearance.faults(sheet, task.paper().frame()), paper + " " + units);
                } catch (DoesNotFit refusal) {
                    assertTrue(refusal.remedy().matches("choose the paper (A[123]|ANSI [BCD]), which holds them"),
                            refusal.getMessage());
                }
            }
        }
    }

    /** With two strakes their names have lines; with many fittings each has a letter. Nothing overlaps, and every name is there. */
    @Test
    void law_strakesAndFittingsAreDrawnAndNamed() {
        for (int many : new int[] {2, 9}) {
            SitingRecord bare = LONG.record(Units.MILLIMETRES, Paper.A1);
            List<LaidFeature> laid = new ArrayList<>();
            for (int i = 0; i < many; i++) {
                double x = 4 + 0.8 * i;
                Sides sides = Sides.values()[i % 3];
                laid.add(new LaidFeature("Fitting " + i, "intake", sides, List.of(Quad.of(x, 0.5, x + 0.3, 0.5, x + 0.3, 0.7, x, 0.7)), Optional.empty()));
            }
            SitingRecord record = new SitingRecord(bare.job(), new BottomFeatures(laid, FeatureList.GIVEN), bare.sitings(),
                    bare.advised(), bare.pocket(), bare.refusal());
            SheetTask task = new SheetTask(record, LONG.table(), Hull.through(LONG.table()), SampleBoat.PROVENANCE);
            Sheet sheet = SheetSetter.set(task, SitingSheet::new);
            assertEquals(List.of(), SheetClearance.faults(sheet, task.paper().frame()));
            List<String> words = words(sheet);
            for (int i = 0; i < many; i++) {
                String name = "Fitting " + i + " (" + Sides.values()[i % 3].words() + ")";
                assertEquals(1, words.stream().filter(word -> word.endsWith(name)).count(), name);
            }
            assertEquals(many > 3, words.contains("a"));
        }
    }

    @Test
    void exact_scaleIsTheLargestThatFits() {
        assertEquals("1:50", sheet(SHORT, Units.MILLIMETRES, Paper.A3).scale().words());
        assertEquals("1:20", sheet(SHORT, Units.MILLIMETRES, Paper.A1).scale().words());
        assertEquals("1:24", sheet(SHORT, Units.FEET_INCHES_EIGHTHS, Paper.ANSI_C).scale().words());
    }

    @Test
    void badInput_paperTooSmall() {
        DoesNotFit refusal = assertThrows(DoesNotFit.class, () -> sheet(SHORT, Units.MILLIMETRES, Paper.A4));
        assertEquals("A4 does not hold the views, tables and notes even at 1:50, the smallest scale at which they can "
                + "be read; choose the paper A3, which holds them", refusal.getMessage());
    }

    /** 0.78 of 6.706 m, to 5 mm, is 5.230 m; from the after end 1.476 m. */
    @Test
    void exact_siteIsGivenFromBothEndsOfTheTable() {
        List<String> words = words(sheet(SHORT, Units.FEET_INCHES_EIGHTHS, Paper.ANSI_C));
        assertTrue(words.contains("5230 (17'-1 7/8\") from station 0 of the table"), words.toString());
        assertTrue(words.contains("1476 (4'-10 1/8\") from after end of table (station 10)"), words.toString());
    }

    @Test
    void exact_sheetSaysHowItIsSeen() {
        String words = String.join(" ", words(sheet(SHORT, Units.MILLIMETRES, Paper.A1)));
        for (String said : List.of("BOTTOM PLAN SEEN FROM BELOW: STARBOARD IS UP", "BODY PLAN, LOOKING FORWARD",
                " STBD PORT FWD CL ", "CAUTIONS", "LOOK BEFORE CUTTING: NOT KNOWN", "DO NOT SCALE - use figures",
                "FOR CHECK - not to be cut until the check measurements are signed")) {
            assertTrue(words.contains(said), said + " in " + words);
        }
    }

    /** In the views a number alone is a site's mark, never a station. */
    @Test
    void law_noBareStationNumber() {
        Sheet sheet = sheet(SHORT, Units.MILLIMETRES, Paper.A2);
        List<String> bare = sheet.views().stream().flatMap(view -> Flattened.of(view).texts().stream())
                .map(Text::words).filter(words -> words.matches("(?i)(st(ation|\\.)? ?)?\\d{1,2}")).distinct().sorted().toList();
        assertEquals(List.of("1", "2"), bare);
    }

    /** Nobody is given a distance to a place that does not serve. */
    @Test
    void law_noDistanceToAPlaceThatDoesNotServe() {
        SheetTask task = new SheetTask(SHORT.nowhere(Units.MILLIMETRES, Paper.A2), SHORT.table(),
                Hull.through(SHORT.table()), SampleBoat.PROVENANCE);
        String words = String.join(" ", words(SheetSetter.set(task, SitingSheet::new)));
        assertTrue(words.contains("NO PLACE FOUND"), words);
        assertTrue(words.contains("NOT MET"), words);
        assertTrue(words.contains("no place found"), words);
        assertFalse(words.contains("from station 0 of the table"), words);
    }

    /** Names of any length and script: cut short with a mark where they find no room, and nothing is overlapped. */
    @Test
    void law_anyNameFindsRoom() {
        for (String owner : List.of("The very long name of a yard and of all its partners, successors and assigns ".repeat(3).strip(),
                "W".repeat(400), "造船所".repeat(50), "\u202eyard\u0007\n\t<b>%%c &amp;")) {
            SheetTask task = new SheetTask(SHORT.record(SampleBoat.wish(Units.MILLIMETRES, Paper.A2, owner), SampleBoat.slab(), 8),
                    SHORT.table(), Hull.through(SHORT.table()), SampleBoat.PROVENANCE);
            Sheet sheet = SheetSetter.set(task, SitingSheet::new);
            assertEquals(List.of(), SheetClearance.faults(sheet, task.paper().frame()), owner);
            boolean marked = words(sheet).stream().anyMatch(words -> words.endsWith("...") && owner.contains(words.substring(0, words.length() - 3)));
            assertEquals(owner.length() > 100, marked, owner);
        }
    }

    private static View view(Sheet sheet, String name) {
        return sheet.views().stream().filter(view -> view.name().startsWith(name)).findFirst().orElseThrow();
    }

    /** The first dot of a balloon's leader in a view. */
    private static Point dot(View view) {
        return Flattened.of(view).on(Layer.DIM).stream().filter(Circle.class::isInstance).map(Circle.class::cast)
                .filter(circle -> circle.radius() < 1).findFirst().orElseThrow().centre();
    }

    private static Line centreline(View view) {
        return Flattened.of(view).on(Layer.CENTRE).stream().map(Line.class::cast).findFirst().orElseThrow();
    }

    /** At 1:20 the site, 1.476 m from the after end and 0.3 m to starboard, lies 73.8 mm right of it and 15 mm up. */
    @Test
    void exact_seenFromBelowStarboardIsUpAndTheBowRight() {
        View plan = view(sheet(SHORT, Units.MILLIMETRES, Paper.A1), "BOTTOM PLAN");
        double afterEnd = Flattened.of(plan).on(Layer.HULL).stream().map(Entity::bounds).mapToDouble(Box::left).min().orElseThrow();
        assertEquals(73.8, dot(plan).x() - afterEnd, 1e-9);
        assertEquals(15, dot(plan).y() - centreline(plan).from().y(), 1e-9);
    }

    @Test
    void exact_lookingForwardStarboardIsRight() {
        View bodyPlan = view(sheet(SHORT, Units.MILLIMETRES, Paper.A1), "BODY PLAN");
        assertEquals(15, dot(bodyPlan).x() - centreline(bodyPlan).from().x(), 1e-9);
    }

    private static SheetTask task(Projection projection, Fit fit) {
        return new SheetTask(SHORT.record(SampleBoat.wish(Units.MILLIMETRES, Paper.A1, projection, "Yard"), fit, SampleBoat.slab(), 8),
                SHORT.table(), Hull.through(SHORT.table()), SampleBoat.PROVENANCE);
    }

    /** The view from below stands over the profile in first angle projection, under it in third (ISO 5456-2). */
    @Test
    void exact_viewsStandAsTheProjectionSays() {
        Sheet first = SheetSetter.set(task(Projection.FIRST_ANGLE, Fit.EXACT), SitingSheet::new);
        assertTrue(view(first, "BOTTOM PLAN").frame().bottom() > view(first, "PROFILE").frame().top());
        Sheet third = SheetSetter.set(task(Projection.THIRD_ANGLE, Fit.EXACT), SitingSheet::new);
        assertEquals(List.of(), SheetClearance.faults(third, SheetSubject.paper(Paper.A1, Orientation.LANDSCAPE).frame()));
        assertTrue(view(third, "PROFILE").frame().bottom() > view(third, "BOTTOM PLAN").frame().top());
    }

    /** The sample's least count is 1 mm. */
    @Test
    void exact_notesSayHowCloselyTheHullFollowsTheTable() {
        String fair = String.join(" ", words(SheetSetter.set(task(Projection.FIRST_ANGLE, Fit.WITHIN_ROUNDING), SitingSheet::new)));
        assertTrue(fair.contains("The hull is drawn fair within the table's rounding: no value is passed by more than half its "
                + "least count, 0.5 mm."), fair);
        String exact = String.join(" ", words(SheetSetter.set(task(Projection.FIRST_ANGLE, Fit.EXACT), SitingSheet::new)));
        assertTrue(exact.contains("The hull is drawn exactly through the table's values"), exact);
    }

    /** 1.476 m: 3 + 1.476 is 4 mm, 0.175 in. Twice the sample's half-breadths 0.157 L, 0.19 L, 0.007 L and 0.01 L. */
    @Test
    void exact_sheetSaysWhatToMeasureFromAndHowFarOffIsAllowed() {
        String words = String.join(" ", words(sheet(SHORT, Units.FEET_INCHES_EIGHTHS, Paper.ANSI_D)));
        assertTrue(words.contains("1476 ±4 (4'-10 1/8\" ±1/8\")"), words);
        assertTrue(words.contains("after end of table (station 10) chine 2106 (6'-10 7/8\"), sheer 2548 (8'-4 3/8\"); "
                + "station 0 of the table chine 94 (0'-3 3/4\"), sheer 134 (0'-5 1/4\")."), words);
    }

    /** What stands beside a word is the whole breadth; a half is a table's word, and would be set out to each side. */
    @Test
    void exact_aBreadthOverBothSidesIsNotCalledHalf() {
        assertEquals(List.of("siding", "siding of the keel", "siding at rabbet", "sheer"), Stream.of("Half-siding", "half siding of the keel",
                "Half-siding at rabbet", "Sheer").map(SitingNotes::overBothSides).toList());
        String words = String.join(" ", words(sheet(SHORT, Units.MILLIMETRES, Paper.A1)));
        assertTrue(words.contains("Breadths over BOTH sides, STRAIGHT"), words);
    }

    /** Every check is met, and yet it cannot be built: it is marked as refused, and the reason stands in the notes. */
    @Test
    void law_aRefusedPocketIsNoPlaceThatServes() {
        SheetTask task = new SheetTask(SHORT.refused(Units.MILLIMETRES, Paper.A1), SHORT.table(), Hull.through(SHORT.table()),
                SampleBoat.PROVENANCE);
        Sheet sheet = SheetSetter.set(task, SitingSheet::new);
        String words = String.join(" ", words(sheet));
        assertTrue(words.contains("keel pocket: REFUSED, see NOTES"), words);
        assertTrue(words.contains("No pocket is drawn for site 2: at a depth of 50.0 mm"), words);
        assertFalse(words.contains("2011 ±5"), words);
        assertEquals(List.of(), SheetClearance.faults(sheet, task.paper().frame()));
    }
}
