package org.garboard.marking;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.Transducer;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.Pocket;
import org.garboard.cutout.PocketOutcome;
import org.garboard.hull.Forms;
import org.garboard.hull.Hull;
import org.garboard.mount.PocketWish;
import org.garboard.offsets.LineKind;
import org.garboard.offsets.OffsetTable;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** On a V of plane sides every tape is the hypotenuse of a flat triangle. */
class MarkingPlanTest {
    private static final OffsetTable TABLE = new Forms(0, Forms.even(0, 6, 4)).keel(x -> 0)
        .named(LineKind.CHINE, "Chine", x -> 1, x -> 0.25)
        .named(LineKind.SHEER, "Sheer", x -> 1.5, x -> 0.75).table();
    private static final Hull HULL = Hull.through(TABLE);
    private static final double SKIN = Math.hypot(1, 0.25);

    private static MarkedLength between(MarkingOut plan, String from, String to) {
        return plan.lengths().stream().filter(length -> length.from().letter().equals(from) && length.to().letter().equals(to))
            .findFirst().orElseThrow();
    }

    @Test
    void exact_placeOnAV() {
        for (int side = -1; side <= 1; side += 2) {
            MarkingOut plan = MarkingPlan.of(HULL, TABLE, Vector3D.of(4, side * 0.4, 0.1), 0.1);
            assertEquals(MarkingOut.Datum.END_OF_TABLE, plan.datum());
            assertEquals(2, between(plan, "A", "B").metres(), 1e-9);
            assertEquals(0.4 * SKIN, between(plan, "B", "E").metres(), 1e-9);
            double arm = between(plan, "B", "C").metres();
            assertEquals(0.4, arm, 1e-9);
            assertEquals(Math.hypot(arm, 0.4 * SKIN), between(plan, "C", "E").metres(), 1e-9);
            assertEquals(Math.hypot(arm, 0.4 * SKIN), between(plan, "D", "E").metres(), 1e-9);
            assertEquals(5, between(plan, "A", "B").within(), 0);
        }
    }

    /** Behind the transom there is no room for a mark abaft of the place: one forward of the datum, and its diagonal. */
    @Test
    void exact_placeOnTheTransomOfAV() {
        for (int side = -1; side <= 1; side += 2) {
            MarkingOut plan = MarkingPlan.of(HULL, TABLE, Vector3D.of(HULL.bottomEnd(), side * 0.4, 0.1), 0.1);
            assertEquals(List.of("A", "C", "E"), plan.marks().stream().map(Mark::letter).toList());
            assertEquals(0.4 * SKIN, between(plan, "A", "E").metres(), 1e-9);
            assertEquals(0.4, between(plan, "A", "C").metres(), 1e-9);
            assertEquals(Math.hypot(0.4, 0.4 * SKIN), between(plan, "C", "E").metres(), 1e-9);
        }
    }

    /** The opening of a pocket in a V without ramps, unrolled: each plane of it keeps its lengths. */
    @Test
    void exact_openingOnAV() {
        Transducer slab = new Transducer("Slab", 0.4, 0.2, 0.04, 0, 0.03, Angle.ofDegrees(0));
        Pocket pocket = ((PocketOutcome.Built) KeelPocketCut.cut(HULL, slab, new PocketWish(OptionalDouble.empty(), 0, 0), 3)).pocket();
        MarkingOut plan = MarkingPlan.of(HULL, TABLE, pocket, 0.1);
        Vector3D one = place(plan, "1");
        Vector3D four = place(plan, "4");
        double diagonal = Math.hypot(four.getX() - one.getX(), (one.getY() - four.getY()) * SKIN);
        assertEquals(diagonal, between(plan, "1", "4").metres(), 1e-7);
        assertEquals(diagonal, between(plan, "2", "3").metres(), 1e-7);
        assertEquals(diagonal / 2, between(plan, "E", "2").metres(), 1e-7);
        assertTrue(one.getX() < 3 - 0.2 && one.getY() > 0.1, "forward and to starboard of the floor's corner");
        assertEquals(2, between(plan, "1", "4").within(), 0);
        assertEquals(3, between(plan, "A", "E").metres(), 1e-9);
        assertTrue(plan.lengths().stream().allMatch(length -> length.tape().touches()));
        assertEquals(List.of("A", "E", "C", "D", "1", "2", "3", "4"), plan.marks().stream().map(Mark::letter).toList());
    }

    private static Vector3D place(MarkingOut plan, String letter) {
        return plan.marks().stream().filter(mark -> mark.letter().equals(letter)).findFirst().orElseThrow().place();
    }
}
