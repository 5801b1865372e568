package org.garboard.cutout.pocket;

import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Lengths;

/**
 * The net of a face of the laminate so far behind the finished one: all places of the boat so far from it. The wall is
 * its section moved; it ends where it meets what lies behind ramps, blends and skin, and rings beyond are set out anew
 * between there and the end of the blend.
 */
final class FaceBehind {
    /** Twice a triangle's area in plan that is rounding [m2]. */
    private static final double FOLD = 1e-12;
    private static final double SAME = 1e-12;

    private final PocketSurface surface;
    private final BlendBehind outside;
    private final double behind;
    private final double[] net;

    /** @param finished net */
    FaceBehind(PocketForm form, PocketSurface surface, double[] finished, double behind) {
        this.surface = surface;
        this.outside = new BlendBehind(form, surface, finished, behind);
        this.behind = behind;
        this.net = finished.clone();
    }

    double[] net() throws CannotBeBuilt {
        for (int ray = 0; ray < surface.rays().count(); ray++) {
            lay(ray);
        }
        requireUnfolded();
        return net;
    }

    private void lay(int ray) throws CannotBeBuilt {
        Mouths mouths = surface.mouths();
        SectionBehind section = surface.profile().behind(mouths.height(ray), mouths.slope(ray), behind, distance -> {
            double u = u(ray, distance, 0);
            return outside.height(u, v(ray, distance, 0, u));
        });
        double[] wall = new double[2 * surface.mouthRing() + 2];
        surface.profile().trace(section, wall);
        double mouth = section.mouth();
        int moved = surface.mouthRing();
        while (moved > 0 && wall[2 * moved - 2] > mouth - SAME) {
            moved--;
        }
        surface.lay(ray, wall, moved, net);
        double along = mouths.lengthU(ray) * surface.rays().alongU(ray) + mouths.lengthV(ray) * surface.rays().alongV(ray);
        double left = along > 0 ? Math.max(0, 1 - (mouth - mouths.distance(ray)) / along) : 0;
        boolean gone = left * mouths.length(ray) < Mouths.SHORTEST;
        for (int ring = surface.mouthRing() + 1; ring < surface.rings(); ring++) {
            int at = surface.at(ray, ring);
            if (gone) {
                System.arraycopy(net, surface.at(ray, surface.mouthRing()), net, at, 3);
            } else {
                net[at] = u(ray, mouth, left * surface.share(ring));
                net[at + 1] = v(ray, mouth, left * surface.share(ring), net[at]);
                net[at + 2] = outside.height(net[at], net[at + 1]);
            }
        }
        for (int ring = 0; ring < surface.rings(); ring++) {
            if (Double.isNaN(net[surface.at(ray, ring) + 2])) {
                throw Mouths.offSkin();
            }
        }
    }

    private double u(int ray, double distance, double share) {
        return surface.rays().u(ray) + surface.rays().alongU(ray) * distance + share * surface.mouths().lengthU(ray);
    }

    private double v(int ray, double distance, double share, double u) {
        return surface.rays().v(ray) + surface.rays().alongV(ray) * distance + share * surface.mouths().lengthV(ray) + surface.mouths().shift(ray, u);
    }

    /** Rays that cross each other would make a face that folds. */
    private void requireUnfolded() throws CannotBeBuilt {
        int count = surface.rays().count();
        for (int ray = 0; ray < count; ray++) {
            int next = (ray + 1) % count;
            for (int ring = surface.rings() - 1; ring > 0; ring--) {
                int a = surface.at(ray, ring);
                int b = surface.at(next, ring);
                int c = surface.at(next, ring - 1);
                int d = surface.at(ray, ring - 1);
                if (turn(a, b, c) < -FOLD || turn(a, c, d) < -FOLD) {
                    throw new CannotBeBuilt("laminate " + Lengths.mm(behind) + " thick folds over itself behind the blends",
                        "blends of one ratio fore and aft and to the sides, or none of the laminate told");
                }
            }
        }
    }

    private double turn(int a, int b, int c) {
        return (net[b] - net[a]) * (net[c + 1] - net[a + 1]) - (net[b + 1] - net[a + 1]) * (net[c] - net[a]);
    }
}
