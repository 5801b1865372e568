package org.garboard.craft;

import java.util.Optional;
import org.garboard.units.Angle;

/**
 * What was measured under way at one speed; at least one of the two.
 *
 * @param knots through the water, more than 0
 * @param trim of the base line, positive bow-up
 * @param wettedKeel from the transom's foot forward to where the water meets the keel, along the keel [m]
 */
public record SeaTrial(double knots, Optional<Angle> trim, Optional<Double> wettedKeel) {
    public SeaTrial {
        if (!(knots > 0 && Double.isFinite(knots)) || trim.isEmpty() && wettedKeel.isEmpty()) {
            throw new IllegalArgumentException("a sea trial at " + knots + " knots with trim " + trim + " and wetted keel " + wettedKeel
                + "; the speed must be more than 0, and one of the others told");
        }
    }
}
