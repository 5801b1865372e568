package org.garboard.drawing.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.garboard.craft.Transducer;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.SheetClearance;
import org.garboard.drawing.layout.DoesNotFit;
import org.garboard.hull.Hull;
import org.garboard.job.DrawingWish.Paper;
import org.garboard.job.DrawingWish.Projection;
import org.garboard.job.DrawingWish.Units;
import org.garboard.job.SitingRecord;
import org.garboard.offsets.OffsetTable;
import org.garboard.units.Angle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** Tiny, wide, long and high transducers, ramps none to gentle, both projections: every pocket can be read. */
class SheetRangeTest {

    private static final SampleBoat BOAT = new SampleBoat(11.9, 13);
    private static final OffsetTable TABLE = BOAT.table();
    private static final Hull HULL = Hull.through(TABLE);

    /** A body and the ratio of its ramps. */
    private record Wish(Transducer body, double ramp) {
    }

    private static final Transducer TINY = body(40, 30, 20, 15, 0);
    private static final Transducer LONG = body(900, 120, 50, 60, 0);
    private static final List<Wish> WISHES = List.of(new Wish(TINY, 0), new Wish(TINY, 4),
            new Wish(body(96, 76, 28, 38, 20), 20), new Wish(body(250, 400, 40, 20, 0), 4),
            new Wish(LONG, 0), new Wish(LONG, 4), new Wish(LONG, 20), new Wish(body(120, 120, 150, 0, 12), 20));

    private static Transducer body(double length, double width, double height, double corner, double lean) {
        return new Transducer("Body, invented", length / 1000, width / 1000, height / 1000, corner / 1000, 0.02,
                Angle.ofDegrees(lean));
    }

    @ParameterizedTest
    @EnumSource(value = Paper.class, names = {"A3", "A2", "ANSI_B", "ANSI_C"})
    void law_everyPocketCanBeRead(Paper paper) {
        for (Units units : Units.values()) {
            for (Wish wish : WISHES) {
                Projection projection = wish.ramp() == 4 ? Projection.THIRD_ANGLE : Projection.FIRST_ANGLE;
                SitingRecord record = BOAT.record(SampleBoat.wish(units, paper, projection, "Yard"), wish.body(), wish.ramp());
                SheetTask task = new SheetTask(record, TABLE, HULL, SampleBoat.PROVENANCE);
                assertReadable(task, PocketSheet::new, paper + " " + units + " " + wish);
            }
        }
    }

    private static void assertReadable(SheetTask task, SheetSetter.Maker<SheetTask> maker, String of) {
        try {
            Sheet sheet = SheetSetter.set(task, maker);
            assertEquals(List.of(), SheetClearance.faults(sheet, task.paper().frame()), of);
        } catch (DoesNotFit refusal) {
            assertTrue(refusal.remedy().matches("choose the paper (A[123]|ANSI [BCD]), which holds them"),
                    of + ": " + refusal.getMessage());
        }
    }
}
