package org.garboard.flow.steps;

import java.util.List;
import org.garboard.flow.shadow.PlanRegion;

/**
 * A bottom with steps under way. Regions to starboard; port mirrors them.
 *
 * @param end x at which the planing surface ahead of the first step ends [m]
 * @param air behind each step, from forward aft
 * @param clean what remains in solid water
 */
public record SteppedBottom(double end, List<AirBehind> air, List<PlanRegion> clean) {
    public SteppedBottom {
        air = List.copyOf(air);
        clean = List.copyOf(clean);
    }
}
