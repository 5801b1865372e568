package org.garboard.cutout.pocket;

import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.Random;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.Transducer;
import org.garboard.cutout.KeelPocketCut;
import org.garboard.cutout.PocketOutcome;
import org.garboard.hull.Hull;
import org.garboard.mount.PocketWish;
import org.garboard.mount.pocket.PocketMake;
import org.garboard.siting.Boats;
import org.garboard.solid.Solid;
import org.garboard.units.Angle;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** How far the triangles of a pocket stray: measured against the same pocket made thirty times finer. */
class PocketChordTest {
    private static final int LOOKED_AT = 100;
    private static final double FINE = 1e-5;

    private static Solid solid(Hull hull, double x, double chord) {
        return assertInstanceOf(PocketOutcome.Built.class, KeelPocketCut.cut(hull,
            new Transducer("body", 0.30, 0.16, 0.06, 0.02, 0.02, Angle.ofDegrees(0)),
            new PocketWish(OptionalDouble.empty(), 0.0025, 8, PocketMake.USUAL.within(chord)), x)).pocket().solids().get(0).solid();
    }

    @ParameterizedTest
    @ValueSource(booleans = {true, false})
    void law_trianglesStrayByTheChordErrorAtMost(boolean vee) {
        double chord = 3e-4;
        Hull hull = vee ? Boats.thirtyNineFeet() : Boats.cylinder(1.2);
        Solid coarse = solid(hull, vee ? 8 : 3, chord);
        Solid fine = solid(hull, vee ? 8 : 3, FINE);
        Random lot = new Random(7);
        double worst = 0;
        for (int i = 0; i < LOOKED_AT; i++) {
            int t = lot.nextInt(coarse.triangles());
            double a = lot.nextDouble();
            double b = lot.nextDouble() * (1 - a);
            Vector3D place = corner(coarse, t, 0).multiply(a).add(corner(coarse, t, 1).multiply(b)).add(corner(coarse, t, 2).multiply(1 - a - b));
            worst = Math.max(worst, distance(place, fine));
        }
        assertTrue(worst > chord / 50 && worst < chord + 2 * FINE, "strays " + worst * 1000 + " mm");
    }

    private static Vector3D corner(Solid solid, int t, int k) {
        int vertex = solid.corner(t, k);
        return Vector3D.of(solid.x(vertex), solid.y(vertex), solid.z(vertex));
    }

    private static double distance(Vector3D place, Solid solid) {
        double least = Double.POSITIVE_INFINITY;
        for (int t = 0; t < solid.triangles(); t++) {
            int vertex = solid.corner(t, 0);
            // no triangle is longer than the pocket's floor but those on the floor, which lie near anyhow
            double far = Math.abs(solid.x(vertex) - place.getX()) + Math.abs(solid.y(vertex) - place.getY()) + Math.abs(solid.z(vertex) - place.getZ());
            if (far < 0.35 + least) {
                least = Math.min(least, toTriangle(place, corner(solid, t, 0), corner(solid, t, 1), corner(solid, t, 2)));
            }
        }
        return least;
    }

    /** To the plane where the foot falls inside, else to the nearest side. */
    private static double toTriangle(Vector3D p, Vector3D a, Vector3D b, Vector3D c) {
        Vector3D n = b.subtract(a).cross(c.subtract(a));
        boolean inside = b.subtract(a).cross(p.subtract(a)).dot(n) >= 0 && c.subtract(b).cross(p.subtract(b)).dot(n) >= 0
            && a.subtract(c).cross(p.subtract(c)).dot(n) >= 0;
        return inside ? Math.abs(p.subtract(a).dot(n)) / n.norm() : Math.min(toSide(p, a, b), Math.min(toSide(p, b, c), toSide(p, c, a)));
    }

    private static double toSide(Vector3D p, Vector3D a, Vector3D b) {
        Vector3D way = b.subtract(a);
        double share = Math.max(0, Math.min(1, p.subtract(a).dot(way) / way.dot(way)));
        return p.distance(a.add(way.multiply(share)));
    }
}
