package org.garboard.drawing.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.garboard.craft.Transducer;
import org.garboard.cutout.PocketSection;
import org.garboard.drawing.Flattened;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.SheetClearance;
import org.garboard.drawing.Text;
import org.garboard.drawing.layout.DoesNotFit;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Units;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

class PocketSheetTest {

    private static final SampleBoat BOAT = new SampleBoat(6.706, 11);

    private static SheetTask task(Units units, Paper paper) {
        return new SheetTask(BOAT.record(units, paper), BOAT.table(), Hull.through(BOAT.table()), SampleBoat.PROVENANCE);
    }

    private static List<String> words(Sheet sheet) {
        return Flattened.of(sheet).texts().stream().map(Text::words).toList();
    }

    @ParameterizedTest
    @EnumSource(Paper.class)
    void law_nothingOverlapsAndNothingLeavesTheFrame(Paper paper) {
        for (Units units : Units.values()) {
            SheetTask task = task(units, paper);
            try {
                Sheet sheet = SheetSetter.set(task, PocketSheet::new);
                assertEquals(List.of(), SheetClearance.faults(sheet, task.paper().frame()), paper + " " + units);
            } catch (DoesNotFit refusal) {
                assertTrue(refusal.remedy().matches("choose the paper (A[123]|ANSI [BCD]), which holds them"),
                        refusal.getMessage());
            }
        }
    }

    /** Body 300 x 150 x 42, corners 30, bedding 2.5 a side; 20 deg deadrise: floor 42 + 77.5 tan 20 deg up, to the mm. */
    @Test
    void exact_pocketIsDimensioned() {
        List<String> words = words(SheetSetter.set(task(Units.MILLIMETRES, Paper.A2), PocketSheet::new));
        assertTrue(words.containsAll(List.of("305", "155", "R32.5", "71", "29", "20.0°", "305 x 155",
                "20.0°, 364 in 1000", "2011", "4695", "±5", "±8", "ramp 1:8")), words.toString());
        assertEquals(71, Math.ceil(42 + 77.5 * Math.tan(Math.toRadians(20))));
    }

    @Test
    void exact_everySectionSaysWhichWayItLooks() {
        Sheet sheet = SheetSetter.set(task(Units.MILLIMETRES, Paper.A2), PocketSheet::new);
        List<String> names = sheet.views().stream().map(view -> view.name()).toList();
        assertEquals(List.of("POCKET SEEN FROM BELOW: STARBOARD IS UP", "LONG SECTION ON CL", "SECTION A-A LOOKING FORWARD",
                "SECTION B-B LOOKING FORWARD", "SECTION C-C LOOKING FORWARD"), names);
        assertTrue(words(sheet).contains("FOR CHECK - not to be cut until the check measurements are signed"));
    }

    /** The floor is level: an element that leans looks aside, and the sheet warns of it. */
    @Test
    void exact_anElementThatLeansIsWarnedOf() {
        for (double lean : new double[] {0, 20}) {
            Transducer body = new Transducer("Body", 0.3, 0.15, 0.042, 0.03, 0.03, Angle.ofDegrees(lean));
            SheetTask task = new SheetTask(BOAT.record(SampleBoat.wish(Units.MILLIMETRES, Paper.A1, "Yard"), body, 8),
                    BOAT.table(), Hull.through(BOAT.table()), SampleBoat.PROVENANCE);
            String words = String.join(" ", words(SheetSetter.set(task, PocketSheet::new)));
            assertEquals(lean > 0, words.contains("the beam of an element that leans 20.0° points so far off to one side"), words);
        }
    }

    /** Bow right: the mark of section A, forward, stands right of B's, and that right of C's. */
    @Test
    void exact_sectionsAreMarkedWhereTheyAreCut() {
        Sheet sheet = SheetSetter.set(task(Units.MILLIMETRES, Paper.A2), PocketSheet::new);
        double[] x = List.of("A", "B", "C").stream().mapToDouble(name -> Flattened.of(sheet.views().get(0)).texts().stream()
                .filter(text -> text.words().equals(name)).findFirst().orElseThrow().at().x()).toArray();
        PocketSection forward = task(Units.MILLIMETRES, Paper.A2).record().pocket().orElseThrow().sections().get(1);
        assertEquals("A", forward.name());
        assertEquals(-forward.along() * 1000 / sheet.scale().denominator(), x[0] - x[1], 1e-9);
        assertTrue(x[1] > x[2]);
    }

    /** A box of 45 mm without ramps: three sections 11 mm apart are marked at 1:1, on smaller paper the middle one alone. */
    @Test
    void exact_sectionsThatStandTooCloseAreLeftOut() {
        Transducer tiny = new Transducer("Body", 0.04, 0.03, 0.020, 0, 0.03, Angle.ofDegrees(0));
        for (Paper paper : List.of(Paper.A1, Paper.A3)) {
            SheetTask task = new SheetTask(BOAT.record(SampleBoat.wish(Units.MILLIMETRES, paper, "Yard"), tiny, 0), BOAT.table(),
                    Hull.through(BOAT.table()), SampleBoat.PROVENANCE);
            PocketTask at = PocketTask.of(task, new Scale(paper == Paper.A1 ? 1 : 2));
            assertEquals(paper == Paper.A1 ? 3 : 1, at.crossSections().size());
            assertEquals("B", at.middleSection().name());
        }
    }

    /** Sharp corners, round ends, no ramps, long ramps: each is drawn clear. */
    @Test
    void law_otherPocketsStandClearToo() {
        for (double radius : new double[] {0, 0.03, 0.075}) {
            for (double ramp : new double[] {0, 3, 15}) {
                Transducer body = new Transducer("Body", 0.3, 0.15, 0.042, radius, 0.03, Angle.ofDegrees(0));
                for (Units units : Units.values()) {
                    SheetTask task = new SheetTask(BOAT.record(SampleBoat.wish(units, Paper.A1, "Yard"), body, ramp),
                            BOAT.table(), Hull.through(BOAT.table()), SampleBoat.PROVENANCE);
                    Sheet sheet = SheetSetter.set(task, PocketSheet::new);
                    assertEquals(List.of(), SheetClearance.faults(sheet, task.paper().frame()), radius + " 1:" + ramp);
                }
            }
        }
    }
}
