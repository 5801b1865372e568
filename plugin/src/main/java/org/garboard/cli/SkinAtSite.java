package org.garboard.cli;

import java.util.Optional;
import org.garboard.hull.Hull;
import org.garboard.job.Job;
import org.garboard.siting.PlanPoint;
import org.garboard.skin.HullSkin;
import org.garboard.skin.Layup;
import org.garboard.skin.ThicknessHere;

/** How the skin is built where a hole goes through it; nothing is guessed where it is not told, or in doubt. */
final class SkinAtSite {

    private SkinAtSite() {
    }

    static Optional<Layup> build(Job job, Hull hull, PlanPoint place) {
        if (job.particulars().skin().isEmpty()) {
            return Optional.empty();
        }
        HullSkin skin = job.particulars().skin().get().on(hull);
        if (!(skin.thicknessAt(place.x(), place.y()) instanceof ThicknessHere.Told told)) {
            return Optional.empty();
        }
        if (skin.layup().isPresent() && skin.layup().get() instanceof Layup.Sandwich) {
            return skin.layup();
        }
        // what reaches through must reach through the thickest
        return Optional.of(new Layup.Whole(told.largest()));
    }
}
