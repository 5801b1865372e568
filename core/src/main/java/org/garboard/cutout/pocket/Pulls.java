package org.garboard.cutout.pocket;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.Lengths;
import org.garboard.mount.pocket.FormerWish;
import org.garboard.mount.pocket.FormerWish.Mold;
import org.garboard.mount.pocket.Walls;
import org.garboard.solid.TriangleMeasure;
import org.garboard.units.Angle;
import org.garboard.units.FixedDecimal;

/**
 * Whether a former comes out of what is laid up on it: the angle of its faces to the way the moulding moves off it, the
 * draft, which is below 0 where a face locks.
 */
final class Pulls {
    private static final double ROUNDING_DEG = 1e-6;

    private final PocketForm form;
    private final PocketSurface surface;
    private final double[] net;
    private double least = Double.POSITIVE_INFINITY;
    private Vector3D where = Vector3D.ZERO;

    Pulls(PocketForm form, PocketSurface surface, double[] net) {
        this.form = form;
        this.surface = surface;
        this.net = net;
    }

    /** Least draft of any face when everything moves off plumb upward [rad]; above 0 water runs out of it too. */
    double plumb() {
        look(Vector3D.of(0, 0, 1), 0);
        return least;
    }

    /** Least draft of a former's faces, each half by its own pull; refused where it is too little. */
    Angle require(FormerWish wish, boolean boatsOwnMold) throws CannotBeBuilt {
        least = Double.POSITIVE_INFINITY;
        double a = wish.pull().radians();
        if (!boatsOwnMold) {
            // a tray comes off along the floor's own axis
            look(form.frame().up(), 0);
        } else if (wish.mold() == Mold.ONE_PIECE) {
            look(Vector3D.of(0, 0, 1), 0);
        } else if (form.frame().origin().getY() != 0) {
            // all of it lies in one half, and comes off with that
            double off = Math.signum(form.frame().origin().getY()) * a;
            look(Vector3D.of(0, -Math.sin(off), Math.cos(off)), 0);
        } else {
            // the half goes off towards its own side, so what is moulded moves the other way against it
            look(Vector3D.of(0, -Math.sin(a), Math.cos(a)), 1);
            look(Vector3D.of(0, Math.sin(a), Math.cos(a)), -1);
        }
        double degrees = Math.toDegrees(least);
        if (degrees < Walls.LEAST_DRAFT_DEG - ROUNDING_DEG) {
            double wanting = Math.ceil(10 * (Walls.LEAST_DRAFT_DEG - degrees - ROUNDING_DEG)) / 10;
            throw new CannotBeBuilt((degrees < 0 ? "the former locks: its face at " : "the former has too little draft: its face at ") + at()
                + " stands at " + FixedDecimal.format(degrees, 1) + " deg to the pull" + pulled(wish, boatsOwnMold) + ", and "
                + FixedDecimal.format(Walls.LEAST_DRAFT_DEG, 1) + " deg is least", remedy(wish, boatsOwnMold, wanting));
        }
        return Angle.ofRadians(least);
    }

    private static String pulled(FormerWish wish, boolean boatsOwnMold) {
        return boatsOwnMold && wish.mold() == Mold.SPLIT_ON_CENTRELINE ? ", " + FixedDecimal.format(wish.pull().degrees(), 1) + " deg off plumb" : "";
    }

    private String remedy(FormerWish wish, boolean boatsOwnMold, double wanting) {
        String draft = "a draft angle of " + FixedDecimal.format(form.walls().draft().degrees() + wanting, 1) + " deg";
        double pull = wish.pull().degrees() - wanting;
        return boatsOwnMold && wish.mold() == Mold.SPLIT_ON_CENTRELINE && pull >= 0
            ? draft + ", or halves pulled " + FixedDecimal.format(pull, 1) + " deg off plumb at most" : draft;
    }

    private String at() {
        return "x = " + Lengths.mm(where.getX()) + ", y = " + Lengths.mm(where.getY());
    }

    private void look(Vector3D moved, int side) {
        Vector3D along = form.frame().along();
        Vector3D across = form.frame().across();
        double pu = moved.dot(along);
        double pv = moved.dot(across);
        double pw = moved.dot(form.frame().up());
        int rays = surface.rays().count();
        consider(0, 0, 1, pu, pv, pw, at(0, 0));
        double lean = form.walls().draft().radians();
        for (int ray = 0; ray < rays; ray++) {
            int next = (ray + 1) % rays;
            // the wall as it is meant, steepest of all between floor and mouth: facets of a round corner lean less
            if (side * surface.rays().alongV(ray) >= 0) {
                consider(Math.cos(lean) * surface.rays().alongU(ray), Math.cos(lean) * surface.rays().alongV(ray), Math.sin(lean), pu, pv, pw,
                    at(ray, surface.mouthRing()));
            }
            for (int ring = surface.rings() - 1; ring > surface.mouthRing(); ring--) {
                int a = at(ray, ring);
                int b = at(next, ring);
                int c = at(next, ring - 1);
                int d = at(ray, ring - 1);
                if (side == 0 || side * (net[a + 1] + net[b + 1]) > 0) {
                    triangle(a, b, c, pu, pv, pw);
                    triangle(a, c, d, pu, pv, pw);
                }
            }
        }
    }

    private int at(int ray, int ring) {
        return 3 * (surface.rings() * ray + ring);
    }

    private void triangle(int a, int b, int c, double pu, double pv, double pw) {
        TriangleMeasure facet = TriangleMeasure.of(net, a, b, c);
        double size = facet.size();
        // facets of no width tell no direction
        if (size > 1e-10) {
            consider(facet.nx() / size, facet.ny() / size, facet.nz() / size, pu, pv, pw, a);
        }
    }

    private void consider(double nx, double ny, double nz, double pu, double pv, double pw, int corner) {
        double draft = Math.asin(Math.max(-1, Math.min(1, nx * pu + ny * pv + nz * pw)));
        if (draft < least) {
            least = draft;
            where = form.frame().toHull(net[corner], net[corner + 1], net[corner + 2]);
        }
    }
}
