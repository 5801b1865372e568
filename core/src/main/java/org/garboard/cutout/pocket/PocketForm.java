package org.garboard.cutout.pocket;

import java.util.List;
import org.garboard.cutout.part.BodyOutline;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.mount.pocket.Walls;
import org.garboard.solid.Parting;

/**
 * The figures of a pocket in its frame. Lengths [m].
 *
 * @param frame its origin on the skin at the site, up square to the floor
 * @param floor outline of the floor's flat
 * @param depth height of the floor
 * @param face height of the body's face
 * @param walls between them
 * @param endRatio length to height of the ramps fore and aft, 0 for none
 * @param sideRatio of the blends to the sides
 * @param creases edges of the skin that run under it from end to end, from starboard to port
 * @param thickness of its laminate, 0 where it is not told
 * @param chord by how much its triangles may stray
 * @param step of the triangles on the skin
 */
record PocketForm(AxisFrame frame, BodyOutline floor, double depth, double face, Walls walls, double endRatio, double sideRatio,
                  List<Parting.Line> creases, double thickness, double chord, double step) {
    /** Where the face lies so near the skin it runs into it without an edge [m]; our choice, less than a coat of filler. */
    private static final double SOFT = 5e-4;
    private static final double ON = 2e-7;
    /** Beside an edge of the skin [m]. */
    private static final double BESIDE = 1e-6;

    PocketForm {
        creases = List.copyOf(creases);
    }

    /** Height of the face above the skin, or 0 where the skin is above it; the change between is made round. */
    static double above(double height) {
        return height >= SOFT ? height : height <= -SOFT ? 0 : (height + SOFT) * (height + SOFT) / (4 * SOFT);
    }

    /** Slope of {@link #above}. */
    static double aboveSlope(double height) {
        return height >= SOFT ? 1 : height <= -SOFT ? 0 : (height + SOFT) / (2 * SOFT);
    }

    /** What of the height is left at a share of the way out: curvature begins and ends with nothing. */
    static double left(double share) {
        return 1 - share * share * share * (10 - 15 * share + 6 * share * share);
    }

    /** The face's surroundings over the skin at a place, at a share of the way out. */
    double surroundings(double u, double v, double share) {
        double skin = frame.outside(u, v);
        return skin + above(face - skin) * left(share);
    }

    /** Whether a place lies on an edge of the skin. */
    boolean onCrease(double u, double v) {
        return creases.stream().anyMatch(line -> Math.abs(line.v(u) - v) < ON);
    }

    /**
     * Height of the skin's inside, by the plane that touches the outside there; NaN off the skin. On an edge of the skin
     * that outboard of it, whose inside comes in over the edge: normals into the boat lean to the keel.
     */
    double inside(double u, double v, double skin) {
        double outboard = frame.origin().getY() + v >= 0 ? BESIDE : -BESIDE;
        return frame.inPlane(u, onCrease(u, v) ? v + outboard : v, skin);
    }
}
