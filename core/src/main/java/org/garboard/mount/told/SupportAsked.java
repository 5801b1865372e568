package org.garboard.mount.told;

import java.util.List;
import org.garboard.handling.Supports;
import org.garboard.mount.Check;
import org.garboard.mount.Demand;
import org.garboard.mount.Footprint;
import org.garboard.mount.LimitName;
import org.garboard.mount.Limits;
import org.garboard.mount.OpenQuestion;
import org.garboard.mount.Surroundings;

/** Nothing that the boat rests on or hangs from bears on the place. */
public final class SupportAsked {

    private SupportAsked() {
    }

    /** @param footprint what must stay free, ramps and all */
    public static List<Demand> demands(Surroundings around, Footprint footprint, Limits limits) {
        if (around.supports().isEmpty()) {
            return List.of();
        }
        Supports supports = around.supports().get();
        double length = footprint.length();
        double width = footprint.width();
        return List.of(Demand.atLeast(OpenQuestion.HANDLING.words(), limits.of(LimitName.SUPPORT_CLEARANCE),
            bed -> supports.gap(around.foot() - bed.x(), bed.y(), length, width),
            "Nothing that she rests on or hangs from bears on the place.",
            "What she rests on or hangs from bears on the place, or too near.")
            .telling(bed -> nearest(supports.nearest(around.foot() - bed.x(), bed.y(), length, width)))
            .ofPlaceAlone());
    }

    public static List<Check> open(Surroundings around) {
        return around.supports().isEmpty() ? List.of(OpenQuestion.HANDLING.check()) : List.of();
    }

    static String nearest(String what) {
        return what.isEmpty() ? "" : "Nearest: " + what + ".";
    }
}
