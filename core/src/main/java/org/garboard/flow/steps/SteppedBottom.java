package org.garboard.flow.steps;

import java.util.List;
import org.garboard.flow.planing.Prism;
import org.garboard.flow.shadow.PlanRegion;

/**
 * A bottom with steps under way. Regions to starboard; port mirrors them.
 *
 * @param forward mean beam and chord deadrise of the planing surface ahead of the first step, over one beam
 * @param end x at which that surface ends [m]
 * @param lcg centre of gravity forward of there, negative abaft [m]
 * @param air behind each step, from forward aft
 * @param clean what remains in solid water
 */
public record SteppedBottom(Prism forward, double end, double lcg, List<AirBehind> air, List<PlanRegion> clean) {
    public SteppedBottom {
        air = List.copyOf(air);
        clean = List.copyOf(clean);
    }
}
