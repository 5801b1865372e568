package org.garboard.mount.told;

import java.util.List;
import org.garboard.inside.LaidInside;
import org.garboard.mount.Check;
import org.garboard.mount.Demand;
import org.garboard.mount.Footprint;
import org.garboard.mount.Limit;
import org.garboard.mount.LimitName;
import org.garboard.mount.Limits;
import org.garboard.mount.OpenQuestion;
import org.garboard.mount.Surroundings;

/** What stands inside behind the place: fuel, room for a hand and a wrench, headroom. */
public final class RoomAsked {
    private static final String LOOK = "Nobody looked inside here, as far as is told: stringers, bulkheads, engine, tanks, fuel tank and fuel"
        + " line behind the skin.";

    private RoomAsked() {
    }

    /**
     * @param block what lies on the skin inside
     * @param headroom above the skin that it takes to put it in and draw it [m]
     */
    public static List<Demand> demands(Surroundings around, Footprint block, double headroom, Limits limits) {
        if (around.inside().isEmpty()) {
            return List.of();
        }
        LaidInside inside = around.inside().get();
        double length = block.length();
        double width = block.width();
        Limit fuel = limits.of(LimitName.FUEL_CLEARANCE);
        Limit above = Limit.ofMetres(headroom, "the transducer's height drawn inward, and its blank: common practice, no source");
        return List.of(
            Demand.atLeast("fuel behind the skin", fuel, bed -> {
                double gap = inside.fuelGap(bed.x(), bed.y(), length, width);
                return gap < fuel.value() || inside.lookedAt(bed.x(), length) ? gap : Double.NaN;
            }, "No fuel tank or fuel line lies behind the skin here.", "A fuel tank or fuel line lies behind the skin: no hole here.")
                .leavingOpen().telling(bed -> inside.lookedAt(bed.x(), length)
                    || inside.fuelGap(bed.x(), bed.y(), length, width) < fuel.value() ? "" : LOOK).ofPlaceAlone(),
            Demand.atLeast("room for hand and wrench", limits.of(LimitName.WRENCH_ROOM),
                bed -> inside.lookedAt(bed.x(), length) ? inside.besideGap(bed.x(), bed.y(), length, width, headroom) : Double.NaN,
                "Hand and wrench find room inside.", "The block inside stands in the way of something, or too near it.")
                .leavingOpen().telling(bed -> inside.lookedAt(bed.x(), length)
                    ? SupportAsked.nearest(inside.nearest(bed.x(), bed.y(), length, width)) : LOOK).ofPlaceAlone(),
            Demand.atLeast("headroom over the stem", above,
                bed -> inside.lookedAt(bed.x(), length) ? inside.headroom(bed.x(), bed.y(), length, width) : Double.NaN,
                "There is room above to draw the transducer and fit its blank.",
                "Too little room above to draw the transducer and fit its blank.")
                .leavingOpen().telling(bed -> inside.lookedAt(bed.x(), length)
                    ? SupportAsked.nearest(inside.over(bed.x(), bed.y(), length, width)) : LOOK).ofPlaceAlone(),
            Demand.atLeast("limber holes", limits.of(LimitName.LIMBER_CLEARANCE),
                bed -> inside.lookedAt(bed.x(), length) ? inside.limberGap(bed.x(), bed.y(), length, width) : Double.NaN,
                "The block inside leaves the limber holes open.", "The block inside would dam a limber hole.")
                .leavingOpen().telling(bed -> inside.lookedAt(bed.x(), length) ? "" : LOOK).ofPlaceAlone());
    }

    public static List<Check> open(Surroundings around) {
        return around.inside().isEmpty() ? List.of(OpenQuestion.ROOM_INSIDE.check()) : List.of();
    }
}
