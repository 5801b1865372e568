package org.garboard.mount.water;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import org.garboard.mount.Demand;
import org.garboard.mount.Footprint;
import org.garboard.mount.Installation;
import org.garboard.mount.LimitName;
import org.garboard.mount.Surroundings;
import org.garboard.units.FixedDecimal;

/** No wake of what is on the bottom reaches the place, nor water that comes down from the surface at the bow. */
final class WakeAsked {

    private WakeAsked() {
    }

    static List<Demand> demands(Installation installation, Surroundings around, Footprint footprint) {
        double length = footprint.length();
        double width = footprint.width();
        List<Demand> demands = new ArrayList<>();
        for (Wakes wakes : around.water().wakes()) {
            demands.add(Demand.atMost("wake shadow at " + wakes.speeds(), installation.limits().of(LimitName.WAKE_LEFT),
                bed -> wakes.left(bed.x(), bed.y(), length, width), "No wake of what is listed on the bottom reaches the place.",
                "The place lies in a wake: bubbles and broken water.")
                .leavingOut(bed -> wakes.doubt(bed, length, width)).telling(bed -> wakes.told(bed.x(), bed.y(), length, width))
                .ofPlaceAlone());
        }
        around.water().sweep().ifPresent(sweep -> {
            SweptShare shares = SweptShare.of(sweep, Math.hypot(length, width) / 2);
            Demand swept = Demand.atMost("water from the surface at the bow", installation.limits().of(LimitName.SWEPT_DOWN),
                bed -> shares.at(bed.x(), bed.y(), bed.highest()), "Water from the surface at the bow passes clear of the place.",
                "Water from the surface at the bow is drawn down past the place, and its bubbles with it.")
                .telling(bed -> "Of the upper " + FixedDecimal.format(1000 * sweep.depth(), 0) + " mm of water at the bow.");
            String open = sweep.lost().map(lost -> "Not all of it is known: " + lost + ".").orElse(notKnown(around.water()));
            demands.add(open.isEmpty() ? swept : swept.leavingOut(bed -> open));
        });
        return demands;
    }

    /** At which speeds it is not known whether she floats, a sentence; empty where there is none. */
    private static String notKnown(BottomWater water) {
        String speeds = water.speeds().stream().filter(each -> !each.missing().isEmpty()).map(WaterAtSpeed::words).collect(Collectors.joining("; "));
        return speeds.isEmpty() ? "" : "Not known at every end of the band, at " + speeds + ".";
    }
}
