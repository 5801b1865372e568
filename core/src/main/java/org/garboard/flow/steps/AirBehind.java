package org.garboard.flow.steps;

import java.util.Optional;
import org.garboard.flow.shadow.PlanRegion;

/**
 * What lies behind one step.
 *
 * @param step its name
 * @param centreline from the step to where the water comes back on the centreline [m]; empty where that is not known
 * @param quarterBeam the same at a quarter of the beam off it [m]
 * @param note what the lengths are worth, or why there is none
 * @param region in which by default nothing is sited, to starboard: to a beam abaft of where the water comes back out to a
 *     quarter of the beam, outboard of that the whole bottom; where the return is not known, all of it
 */
public record AirBehind(String step, Optional<Double> centreline, Optional<Double> quarterBeam, String note, PlanRegion region) {
}
