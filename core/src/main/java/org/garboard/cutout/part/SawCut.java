package org.garboard.cutout.part;

import java.util.OptionalDouble;
import java.util.function.DoubleBinaryOperator;
import org.garboard.units.Angle;

/**
 * The plane in which a block is sawn to the skin. The block lies on its other face, which is plane; heights are above that,
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
 * @param blank height of the blank, with what stands out of the cut; where it makes the block on the other side of the skin too, with the saw's kerf;
 *     empty where the skin is not told
 */
public record SawCut(Angle across, Angle along, Angle total, double middle, double nose, double tail, double port,
                     double starboard, double left, OptionalDouble blank) {

    /**
     * Of a plane.
     *
     * @param off height of the block's plane face in the plane's own frame [m]
     * @param nose forward end of the block, below 0, along the frame [m]
     * @param tail after end
     * @param half half of its width
     * @param looks which way the skin lies from the block's plane face: 1 above it, -1 below it
     */
    public static SawCut of(SawPlane plane, double off, double nose, double tail, double half, int looks, OptionalDouble blank) {
        DoubleBinaryOperator high = (u, v) -> looks * (plane.at(u, v) - off);
        return new SawCut(Angle.ofRadians(looks * Math.atan(plane.b())), Angle.ofRadians(looks * Math.atan(plane.a())),
            Angle.ofRadians(Math.atan(Math.hypot(plane.a(), plane.b()))), high.applyAsDouble(0, 0), high.applyAsDouble(nose, 0),
            high.applyAsDouble(tail, 0), high.applyAsDouble(0, -half), high.applyAsDouble(0, half), plane.left(), blank);
    }
}
