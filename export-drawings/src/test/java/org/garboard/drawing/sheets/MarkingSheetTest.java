package org.garboard.drawing.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.garboard.craft.BottomFeatures;
import org.garboard.drawing.Flattened;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.SheetClearance;
import org.garboard.drawing.Text;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Units;
import org.garboard.job.SitingRecord;
import org.garboard.lines.TapeRun;
import org.garboard.marking.MarkingOut;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class MarkingSheetTest {
    private static final SampleBoat BOAT = new SampleBoat(6.706, 11);
    private static final Hull HULL = Hull.through(BOAT.table());

    private static SheetTask task(SitingRecord record) {
        return new SheetTask(record, BOAT.table(), HULL, SampleBoat.PROVENANCE);
    }

    /** The flush site is advised, or the pocket: the other mount's siting comes second in the record. */
    private static SitingRecord pocketAdvised(SitingRecord record) {
        return new SitingRecord(record.job(), BottomFeatures.NOT_LISTED, record.sitings(), Optional.of(record.sitings().get(1)),
                record.pocket(), "");
    }

    @ParameterizedTest
    @EnumSource(value = Paper.class, names = {"A3", "A2", "A1", "ANSI_B", "ANSI_C"})
    void law_everySheetCanBeRead(Paper paper) {
        for (Units units : Units.values()) {
            SitingRecord flush = BOAT.record(units, paper);
            for (SitingRecord record : List.of(flush, pocketAdvised(flush))) {
                Sheet sheet = SheetSetter.set(task(record), MarkingSheet::new);
                assertEquals(List.of(), SheetClearance.faults(sheet, task(record).paper().frame()), paper + " " + units);
                Sheet checks = SheetSetter.set(task(record), CheckSheet::new);
                assertEquals(List.of(), SheetClearance.faults(checks, task(record).paper().frame()), paper + " " + units);
            }
        }
    }

    /** Every length of the plan stands on the sheet as the job's units say it. */
    @ParameterizedTest
    @EnumSource(Units.class)
    void exact_figuresOfThePlan(Units units) {
        SheetTask task = task(pocketAdvised(BOAT.record(units, Paper.A1)));
        MarkingOut plan = task.marking().orElseThrow();
        List<String> words = Flattened.of(SheetSetter.set(task, MarkingSheet::new)).texts().stream().map(Text::words).toList();
        assertTrue(plan.lengths().size() > 10);
        plan.lengths().forEach(length -> {
            assertTrue(words.contains(MarkingTables.name(length)));
            assertTrue(words.contains(task.figures().length(length.metres())), length.toString());
        });
        assertTrue(words.stream().anyMatch(line -> line.startsWith("NOTHING ON THE BOAT IS KNOWN")), "the table has no transom");
    }

    /** What is only there once it is cut is not asked for before. */
    @Test
    void law_whatTheCutMakesIsMeasuredAfterIt() {
        SheetTask task = task(pocketAdvised(BOAT.record(Units.MILLIMETRES, Paper.A1)));
        List<String> words = Flattened.of(SheetSetter.set(task, CheckSheet::new)).texts().stream().map(Text::words).toList();
        int after = words.lastIndexOf("Measure");
        assertTrue(words.contains("MEASURE AFTER CUTTING, at the dry fit"), words.toString());
        assertTrue(words.indexOf("Pocket: depth of floor at keel, middle") > after && after > words.indexOf("Deadrise at the place"), words.toString());
    }

    /** Whoever reads a tape is told whether it lies on the skin; where the hull stands between there is no straight way to tape. */
    @Test
    void law_aTapeIsCalledAsItLies() {
        SheetTask task = task(pocketAdvised(BOAT.record(Units.MILLIMETRES, Paper.A1)));
        MarkingOut plan = task.marking().orElseThrow();
        List<String> words = Flattened.of(SheetSetter.set(task, MarkingSheet::new)).texts().stream().map(Text::words).toList();
        plan.lengths().forEach(length -> {
            assertTrue(words.contains((length.tape().standsOff() <= 0.0005 ? "SKIN, " : "TAUT, ") + length.way().words()), length.toString());
            TapeRun tape = length.tape();
            String straight = words.get(words.indexOf(MarkingTables.name(length)) + 3);
            assertEquals(tape.length() - tape.straight() > 0.0005 ? "-" : "the same", straight, length.toString());
        });
        assertTrue(words.contains("-"), "the pocket's diagonals cross the keel");
    }
}
