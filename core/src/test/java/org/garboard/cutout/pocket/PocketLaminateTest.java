package org.garboard.cutout.pocket;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.Transducer;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.SelfCrossing;
import org.garboard.hull.Hull;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.PocketLayup;
import org.garboard.mount.pocket.PocketLayup.Layer;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.mount.pocket.Walls;
import org.garboard.siting.Boats;
import org.garboard.solid.Solid;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** Laminate behind a pocket, thicker than its edges are round too: all places nearer to the finished face than that. */
class PocketLaminateTest {
    private static final double L = 0.300;
    private static final double W = 0.160;
    private static final double H = 0.060;
    private static final double DRAFT = Math.toRadians(5);
    private static final double CHORD = 1e-4;

    private static PocketShape shape(Hull hull, Walls walls, PocketLayup layup, double depth, double ratio, double chord) throws CannotBeBuilt {
        PocketMake make = PocketMake.USUAL.with(walls).with(layup).within(chord);
        Transducer body = new Transducer("test body", L, W, H, 0, 0.02, Angle.ofDegrees(0));
        return PocketShape.of(hull, body, new PocketWish(OptionalDouble.of(depth), 0, ratio, make), BoatTold.NOTHING, 3, 0);
    }

    private static Walls walls(double floorRadius, double edgeRadius) {
        return new Walls(Angle.ofRadians(DRAFT), floorRadius, edgeRadius, Optional.empty());
    }

    private static PocketLayup one(double thickness) {
        return new PocketLayup(0, List.of(new Layer("glass", thickness)), 12, 0.003);
    }

    private static Solid layer(PocketShape shape, String name) throws CannotBeBuilt {
        return shape.solids().stream().filter(part -> part.name().equals(name)).findFirst()
            .orElseThrow(() -> new AssertionError(name)).solid();
    }

    /** Simpson's rule. */
    private static double integral(double from, double to, DoubleUnaryOperator f) {
        int parts = 20000;
        double sum = f.applyAsDouble(from) + f.applyAsDouble(to);
        for (int i = 1; i < parts; i++) {
            sum += f.applyAsDouble(from + (to - from) * i / parts) * (i % 2 == 0 ? 2 : 4);
        }
        return sum * (to - from) / parts / 3;
    }

    /** Area of the floor grown by d, corners round (Steiner). */
    private static double area(double d) {
        return L * W + 2 * (L + W) * d + Math.PI * d * d;
    }

    /** How far a section reaches at a height: a line from a fillet that is round about the floor's outline, so far behind. */
    private static double reach(double w, double depth, double floorRadius, double behind) {
        double radius = floorRadius + behind;
        double over = w - (depth - floorRadius);
        double foot = floorRadius * Math.tan((Math.PI / 2 - DRAFT) / 2);
        return over >= radius * Math.sin(DRAFT) ? Math.sqrt(Math.max(0, radius * radius - over * over))
            : foot + (depth - w) * Math.tan(DRAFT) + behind / Math.cos(DRAFT);
    }

    /**
     * On a flat bottom, laminate three times as thick as its edge is round: between the finished section and the same
     * moved by its thickness, a wall that meets the inside of the skin in a point, and a rim from there to the opening.
     */
    @Test
    void exact_thickerThanTheEdgeIsRound() throws CannotBeBuilt {
        double t = 0.016;
        for (double floorRadius : new double[] {0, 0.010}) {
            for (double edge : new double[] {0, 0.005}) {
                double end = reach(0, H, floorRadius, 0) + edge * Math.tan((Math.PI / 2 - DRAFT) / 2);
                double finished = integral(0, edge * (1 - Math.sin(DRAFT)), w -> area(end - Math.sqrt(Math.max(0, 2 * edge * w - w * w))))
                    + integral(edge * (1 - Math.sin(DRAFT)), H, w -> area(reach(w, H, floorRadius, 0)));
                double rim = integral(0, t, w -> area(end + (reach(t, H, floorRadius, t) - end) * w / t));
                double exact = rim + integral(t, H + t, w -> area(reach(w, H, floorRadius, t))) - finished;
                Solid layer = layer(shape(Boats.prismaticV(0), walls(floorRadius, edge), one(t), H, 0, CHORD / 4), "pocket-layer-1");
                assertEquals(exact, layer.volume(), 5e-4 * exact, "floor radius " + floorRadius + ", edge radius " + edge);
                assertEquals(0, layer.holes());
                assertEquals(0, SelfCrossing.count(layer));
            }
        }
    }

    /** Layers make up the whole: what a face is to one it is to the next. */
    @Test
    void law_layersAddUp() throws CannotBeBuilt {
        PocketLayup many = new PocketLayup(0.0006, List.of(new Layer("mat", 0.0024), new Layer("glass", 0.009), new Layer("glass", 0.004)), 12, 0.003);
        for (Hull hull : List.of(Boats.prismaticV(20), Boats.cylinder(1.2))) {
            double whole = layer(shape(hull, walls(0.01, 0.005), one(0.016), 0.1, 8, CHORD), "pocket-layer-1").volume();
            PocketShape parted = shape(hull, walls(0.01, 0.005), many, 0.1, 8, CHORD);
            double sum = parted.solids().stream().filter(part -> part.name().startsWith("pocket-layer") || part.name().equals("pocket-gelcoat"))
                .mapToDouble(part -> part.solid().volume()).sum();
            assertEquals(whole, sum, 2e-3 * whole);
        }
    }

    /** A ledge narrower and a wall lower than the laminate is thick are covered by what is beside them. */
    @Test
    void law_coveredPartsAreGone() throws CannotBeBuilt {
        Walls rebated = new Walls(Angle.ofRadians(DRAFT), 0.004, 0.002, Optional.of(new Walls.Rebate(0.008, 0.010)));
        for (Hull hull : List.of(Boats.prismaticV(0), Boats.prismaticV(20))) {
            PocketShape shape = shape(hull, rebated, one(0.016), 0.1, 6, CHORD);
            assertEquals(0, SelfCrossing.count(layer(shape, "pocket-layer-1")));
            nowhereNearerNorFarther(shape, 0.016, CHORD);
        }
    }

    /** Measured from every so-manyth point of the face behind to the finished face: nowhere nearer or farther than thick. */
    @Test
    void law_soFarFromTheFaceEverywhere() throws CannotBeBuilt {
        for (Hull hull : List.of(Boats.prismaticV(0), Boats.prismaticV(20), Boats.cylinder(1.2), Boats.warpedV(30, 12))) {
            for (double t : new double[] {0.003, 0.016}) {
                nowhereNearerNorFarther(shape(hull, walls(0.01, 0.005), one(t), 0.12, 5, CHORD), t, CHORD);
            }
        }
    }

    private static void nowhereNearerNorFarther(PocketShape shape, double t, double chord) throws CannotBeBuilt {
        PocketSurface surface = shape.surface();
        double[] finished = surface.net(0);
        double[] behind = surface.net(t);
        for (int ray = 0; ray < surface.rays().count(); ray += 9) {
            for (int ring = 0; ring < surface.rings(); ring += 3) {
                int at = surface.at(ray, ring);
                Vector3D place = Vector3D.of(behind[at], behind[at + 1], behind[at + 2]);
                double skin = skin(shape, place);
                double distance = Math.min(skin, distance(surface, finished, place));
                assertEquals(t, distance, 2 * chord, "ray " + ray + ", ring " + ring + " at " + place);
            }
        }
    }

    /** From the skin, by the planes that touch it under the place and to both sides; inside a pocket it lies farther than the face. */
    private static double skin(PocketShape shape, Vector3D place) {
        double least = Double.POSITIVE_INFINITY;
        double step = 1e-5;
        for (int side = -1; side <= 1; side++) {
            double v = place.getY() + side * step;
            double w = shape.frame().outside(place.getX(), v);
            double du = (shape.frame().outside(place.getX() + step, v) - w) / step;
            double dv = (shape.frame().outside(place.getX(), v + step) - w) / step;
            least = Math.min(least, (place.getZ() - w) / Math.sqrt(1 + du * du + dv * dv));
        }
        return least;
    }

    private static double distance(PocketSurface surface, double[] net, Vector3D place) {
        double least = Double.POSITIVE_INFINITY;
        int rays = surface.rays().count();
        for (int ray = 0; ray < rays; ray++) {
            int next = (ray + 1) % rays;
            for (int ring = surface.rings() - 1; ring > 0; ring--) {
                Vector3D a = point(net, surface.at(ray, ring));
                Vector3D b = point(net, surface.at(next, ring));
                Vector3D c = point(net, surface.at(next, ring - 1));
                Vector3D d = point(net, surface.at(ray, ring - 1));
                if (beside(place, a, b, c, d) < least) {
                    least = Math.min(least, Math.min(distance(a, b, c, place), distance(a, c, d, place)));
                }
            }
        }
        return least;
    }

    /** At least so far along one axis. */
    private static double beside(Vector3D place, Vector3D... corners) {
        double most = 0;
        for (int axis = 0; axis < 3; axis++) {
            double low = Double.POSITIVE_INFINITY;
            double high = Double.NEGATIVE_INFINITY;
            for (Vector3D corner : corners) {
                low = Math.min(low, corner.toArray()[axis]);
                high = Math.max(high, corner.toArray()[axis]);
            }
            most = Math.max(most, Math.max(low - place.toArray()[axis], place.toArray()[axis] - high));
        }
        return most;
    }

    private static Vector3D point(double[] net, int at) {
        return Vector3D.of(net[at], net[at + 1], net[at + 2]);
    }

    /** From a triangle (Ericson 2005, Real-Time Collision Detection, 5.1.5, from memory), by its plane and its sides. */
    private static double distance(Vector3D a, Vector3D b, Vector3D c, Vector3D p) {
        Vector3D n = b.subtract(a).cross(c.subtract(a));
        double least = Math.min(side(a, b, p), Math.min(side(b, c, p), side(c, a, p)));
        double size = n.norm();
        if (size < 1e-14) {
            return least;
        }
        boolean over = b.subtract(a).cross(p.subtract(a)).dot(n) >= 0 && c.subtract(b).cross(p.subtract(b)).dot(n) >= 0
            && a.subtract(c).cross(p.subtract(c)).dot(n) >= 0;
        return over ? Math.min(least, Math.abs(p.subtract(a).dot(n)) / size) : least;
    }

    private static double side(Vector3D a, Vector3D b, Vector3D p) {
        Vector3D along = b.subtract(a);
        double square = along.dot(along);
        double share = square > 0 ? Math.max(0, Math.min(1, p.subtract(a).dot(along) / square)) : 0;
        return p.distance(a.add(along.multiply(share)));
    }
}
