package org.garboard.flow.planing;

import org.garboard.units.Angle;

/**
 * The forces on the boat that are not the bottom's.
 *
 * @param weight [N]
 * @param lcg centre of gravity forward of the transom, along the keel [m]; NaN where it is not told, and moments with it are not known
 * @param vcg centre of gravity above the keel, square to it [m]
 * @param thrustArm how far below the centre of gravity the line of thrust passes, negative above [m]: the paper's f
 * @param shaft angle of the thrust to the keel, positive when it lifts: the paper's epsilon
 */
public record Loading(double weight, double lcg, double vcg, double thrustArm, Angle shaft) {
    public Loading {
        if (!(weight > 0) || !Double.isFinite(weight + vcg + thrustArm + shaft.radians()) || Double.isInfinite(lcg)) {
            throw new IllegalArgumentException("weight " + weight + " N, centre of gravity " + lcg + " m forward and " + vcg
                + " m up, thrust " + thrustArm + " m below it; the weight must be more than 0, all of them finite");
        }
    }

    /** A weight alone [N]: what it turns is not asked. */
    public static Loading ofWeight(double weight) {
        return new Loading(weight, Double.NaN, 0, 0, Angle.ofRadians(0));
    }
}
