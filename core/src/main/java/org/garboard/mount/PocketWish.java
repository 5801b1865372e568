package org.garboard.mount;

import java.util.OptionalDouble;

/**
 * What the job asks of a keel pocket. Lengths [m].
 *
 * @param depth of the floor above the keel line at the site; by default such that the body's face
 *     lies level with the skin at its outer edges
 * @param gap bedding between body and wall, each side
 * @param rampRatio length of the fore and aft ramps to their height, 8 for 1:8; 0 for none
 */
public record PocketWish(OptionalDouble depth, double gap, double rampRatio) {
}
