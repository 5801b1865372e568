package org.garboard.cutout.fairing;

import java.util.OptionalDouble;
import org.garboard.units.Angle;

/**
 * The plane that parts the blank into the outer and the inner block. The blank lies on its face; heights are above it,
 * square to it [m].
 *
 * @param across angle of the cut to the face athwart the block, positive where the block is higher to starboard: the tilt
 *     of the saw's table for a cut along the block
 * @param along angle of the cut to the face along the block, positive where it is higher aft: the taper to pack up under
 *     the blank's end
 * @param total angle between cut and face
 * @param middle height of the cut over the body's middle
 * @param nose height of the cut at the nose
 * @param tail height of the cut at the tail
 * @param port height of the cut at the widest place, port side
 * @param starboard the same, starboard
 * @param left largest distance between cut and true skin under the block, to be scribed off
 * @param blank height of a blank for both blocks, with the saw's kerf; empty where the skin is not told
 */
public record SawCut(Angle across, Angle along, Angle total, double middle, double nose, double tail, double port,
                     double starboard, double left, OptionalDouble blank) {
}
