package org.garboard.acoustics.clearance;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;

/**
 * Strakes and fittings as boxes hung under the skin, plumb, in pieces short enough to follow it. What reaches out behind the transom
 * goes on level with the skin's end.
 *
 * @param bodies in the order of the job, starboard before port
 * @param untold names of features that stand out who knows how far, or begin beyond the skin: of these nothing is known
 */
public record FeatureBodies(List<Block> bodies, List<String> untold) {
    /** Length of a piece [m]: our choice, because a bottom sloping 5 deg strays 4 mm from it. */
    private static final double PIECE = 0.1;

    public FeatureBodies {
        bodies = List.copyOf(bodies);
        untold = List.copyOf(untold);
    }

    /** @param features as they lie on the hull */
    public static FeatureBodies of(Hull hull, List<LaidFeature> features) {
        List<Block> bodies = new ArrayList<>();
        List<String> untold = new ArrayList<>();
        for (LaidFeature feature : features) {
            if (feature.height().isEmpty()) {
                untold.add(feature.name());
            } else if (feature.height().get() > 0) {
                if (feature.sides().meets(Sides.STARBOARD)) {
                    feature.cover().forEach(quad -> hang(bodies, untold, hull, feature, quad, 1));
                }
                if (feature.sides().meets(Sides.PORT)) {
                    feature.cover().forEach(quad -> hang(bodies, untold, hull, feature, quad, -1));
                }
            }
        }
        return new FeatureBodies(bodies, untold);
    }

    /** Corners 0, 1 and 3, 2 are the two long sides; side 1 is starboard, -1 port. */
    private static void hang(List<Block> bodies, List<String> untold, Hull hull, LaidFeature feature, Quad quad, int side) {
        double length = Math.hypot(quad.x(1) - quad.x(0), quad.y(1) - quad.y(0));
        int pieces = Math.max(1, (int) Math.ceil(length / PIECE));
        double lowest = Double.NaN;
        double highest = Double.NaN;
        for (int piece = 0; piece < pieces; piece++) {
            double from = (double) piece / pieces;
            double to = (piece + 1.0) / pieces;
            double[] x = {at(quad.x(0), quad.x(1), from), at(quad.x(0), quad.x(1), to), at(quad.x(3), quad.x(2), to), at(quad.x(3), quad.x(2), from)};
            double[] y = {at(quad.y(0), quad.y(1), from), at(quad.y(0), quad.y(1), to), at(quad.y(3), quad.y(2), to), at(quad.y(3), quad.y(2), from)};
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < x.length; i++) {
                double z = hull.height(x[i], Math.abs(y[i]));
                low = z < low ? z : low;
                high = z > high ? z : high;
            }
            if (low <= high) {
                lowest = low;
                highest = high;
            }
            if (!(lowest <= highest)) {
                untold.add(feature.name());
                return;
            }
            double lowX = Math.min(Math.min(x[0], x[1]), Math.min(x[2], x[3]));
            double highX = Math.max(Math.max(x[0], x[1]), Math.max(x[2], x[3]));
            double lowY = Math.min(Math.min(y[0], y[1]), Math.min(y[2], y[3]));
            double highY = Math.max(Math.max(y[0], y[1]), Math.max(y[2], y[3]));
            bodies.add(Block.upright(feature.name(),
                Vector3D.of(lowX, side > 0 ? lowY : -highY, lowest - feature.height().get()),
                Vector3D.of(highX, side > 0 ? highY : -lowY, highest)));
        }
    }

    private static double at(double from, double to, double share) {
        return from + share * (to - from);
    }
}
