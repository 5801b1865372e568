package org.garboard.flow.shadow;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.locationtech.jts.geom.Geometry;

/**
 * What the wakes of one feature reach at whatever speed, as they fall on both sides.
 *
 * @param feature that throws them
 * @param wake the likely ones together
 * @param ahead what it draws in, where it is a propeller
 */
public record EveryWake(Shedder feature, List<PlanRegion> wake, List<PlanRegion> ahead) {
    public EveryWake {
        wake = List.copyOf(wake);
        ahead = List.copyOf(ahead);
    }

    /** One for each feature, in the order in which it is first met. */
    public static List<EveryWake> of(List<Shadow> shadows) {
        Plan plan = new Plan();
        return shadows.stream().collect(Collectors.groupingBy(Shadow::feature, LinkedHashMap::new, Collectors.toList())).entrySet().stream()
            .map(each -> new EveryWake(each.getKey(), together(plan, each.getValue(), Shadow::wake), together(plan, each.getValue(), Shadow::ahead)))
            .toList();
    }

    private static List<PlanRegion> together(Plan plan, List<Shadow> shadows, Function<Shadow, List<PlanRegion>> regions) {
        if (shadows.size() == 1) {
            return regions.apply(shadows.get(0));
        }
        List<Geometry> figures = shadows.stream().flatMap(shadow -> regions.apply(shadow).stream()).map(plan::figure).toList();
        return plan.regions(plan.together(figures));
    }
}
