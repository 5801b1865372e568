package org.garboard.flow.shadow;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import org.locationtech.jts.geom.Geometry;

/** What is left of the bottom in solid water, outside every shadow. */
public final class CleanWater {
    /** Smaller pieces hold no face [m2]: our choice. */
    private static final double LEAST = 0.01;

    private CleanWater() {
    }

    /**
     * Both sides, as the shadows fall; the largest first.
     *
     * @param solid what solid water runs along, to starboard
     * @param shadows likely wakes and what propellers draw in; advisory edges do not count
     */
    public static List<PlanRegion> of(List<PlanRegion> solid, List<Shadow> shadows) {
        Plan plan = new Plan();
        List<Geometry> stirred = new ArrayList<>();
        for (Shadow shadow : shadows) {
            shadow.wake().forEach(region -> stirred.add(plan.figure(region)));
            shadow.ahead().forEach(region -> stirred.add(plan.figure(region)));
        }
        Geometry bottom = plan.bothSides(solid.stream().map(plan::figure).toList());
        return plan.regions(plan.without(bottom, plan.together(stirred))).stream().filter(region -> region.area() >= LEAST)
            .sorted(Comparator.comparingDouble(region -> -region.area())).toList();
    }
}
