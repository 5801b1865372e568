package org.garboard.craft;

import org.garboard.units.Angle;

/**
 * The line along which the boat is pushed.
 *
 * @param height where it crosses the plane of the transom, above the transom's foot (the after end of the keel line),
 *               negative below [m]
 * @param inclination to the base line, positive where the line rises forward: a shaft that runs down aft
 */
public record ThrustLine(double height, Angle inclination) {
}
