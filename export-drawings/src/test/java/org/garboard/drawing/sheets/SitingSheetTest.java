package org.garboard.drawing.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.garboard.drawing.Flattened;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.SheetClearance;
import org.garboard.drawing.Text;
import org.garboard.drawing.layout.DoesNotFit;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Units;
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

    /** In the views a number alone is a site's mark or the height of the waterline, never a station. */
    @Test
    void law_noBareStationNumber() {
        Sheet sheet = sheet(SHORT, Units.MILLIMETRES, Paper.A2);
        List<String> bare = sheet.views().stream().flatMap(view -> Flattened.of(view).texts().stream())
                .map(Text::words).filter(words -> words.matches("(?i)(st(ation|\\.)? ?)?\\d+")).distinct().sorted().toList();
        assertEquals(List.of("1", "2", "402"), bare);
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

    @Test
    void badInput_ownerTooLongForItsField() {
        String owner = "The very long name of a yard and of all its partners, successors and assigns ".repeat(3).strip();
        SheetTask task = new SheetTask(SHORT.record(SampleBoat.wish(Units.MILLIMETRES, Paper.A2, owner), SampleBoat.slab(), 8),
                SHORT.table(), Hull.through(SHORT.table()), SampleBoat.PROVENANCE);
        DoesNotFit refusal = assertThrows(DoesNotFit.class, () -> SheetSetter.set(task, SitingSheet::new));
        assertEquals("the title block's field \"Legal owner\" cannot hold \"" + owner + "\"", refusal.reason());
        assertEquals("shorten it to 86 letters or so", refusal.remedy());
    }
}
