package org.garboard.cutout.template;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.function.Function;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.FlatPoint;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.cutout.skin.FormSkin;
import org.garboard.solid.Loop;
import org.junit.jupiter.api.Test;

/** Skin laid flat against closed forms: cylinder and cone unroll, a ball does not. */
class DevelopmentTest {
    private static final Loop BODY = Loop.of(-0.1, -0.06, 0.1, -0.06, 0.1, 0.06, -0.1, 0.06).parted(0.02);
    private static final Loop HOLE = Loop.circle(0.02, 0.01, 0.015, 1e-4);

    /** All lengths between flat points equal those of the unrolled form. */
    private static void unrolls(FormSkin skin, double x, double y, Function<Vector3D, double[]> unrolled)
            throws CannotBeBuilt {
        AxisFrame frame = AxisFrame.squareToSkin(skin, x, y);
        Development flat = Development.of(frame, BODY);
        assertEquals(0, flat.stretch(), 2e-9);
        List<FlatPoint> hole = flat.flat(HOLE);
        for (int i = 0; i < BODY.size(); i++) {
            for (int k = 0; k < HOLE.size(); k++) {
                double[] a = unrolled.apply(onSkin(frame, BODY, i));
                double[] b = unrolled.apply(onSkin(frame, HOLE, k));
                assertEquals(Math.hypot(a[0] - b[0], a[1] - b[1]), distance(flat.outline().get(i), hole.get(k)), 5e-9);
            }
        }
    }

    private static Vector3D onSkin(AxisFrame frame, Loop loop, int i) {
        return frame.toHull(loop.u(i), loop.v(i), frame.outside(loop.u(i), loop.v(i)));
    }

    private static double distance(FlatPoint one, FlatPoint other) {
        return Math.hypot(one.u() - other.u(), one.v() - other.v());
    }

    @Test
    void exact_plane() throws CannotBeBuilt {
        Vector3D along = Vector3D.of(1, 0, 0.05).normalize();
        Vector3D across = Vector3D.of(-0.05, -0.4, 1).normalize().cross(along);
        unrolls(FormSkin.plane(0.05, 0.4), 3, 0.5, p -> new double[] {p.dot(along), p.dot(across)});
    }

    /**
     * Plumb planes through the middle meet a plane z = a x + b y along (1, 0, a) and (0, 1, b): on the flat the station line crosses
     * the other at acos(a b / sqrt((1 + a^2)(1 + b^2))), not square, and both reach from edge to edge over the hole.
     */
    @Test
    void exact_crossOnAPlane() throws CannotBeBuilt {
        double a = 0.3;
        double b = 0.4;
        Development flat = Development.of(AxisFrame.squareToSkin(FormSkin.plane(a, b), 3, 0.5), BODY);
        List<FlatPoint> along = flat.cross().get(0).line();
        List<FlatPoint> station = flat.cross().get(1).line();
        for (FlatPoint place : along) {
            assertEquals(0, place.v(), 1e-9);
        }
        double angle = Math.acos(a * b / Math.sqrt((1 + a * a) * (1 + b * b)));
        for (FlatPoint place : station) {
            assertEquals(0, place.u() * Math.sin(angle) - place.v() * Math.cos(angle), 1e-9);
        }
        assertEquals(0.2, along.get(along.size() - 1).u() - along.get(0).u(), 2e-3);
        assertEquals(0.12 / Math.sin(angle), distance(station.get(0), station.get(station.size() - 1)), 2e-3);
    }

    @Test
    void exact_cylinder() throws CannotBeBuilt {
        double r = 0.7;
        for (double turn : new double[] {0, 0.4, 1.2}) {
            unrolls(FormSkin.cylinder(r, turn), 0.1, 0.2, p -> new double[] {
                Math.cos(turn) * p.getX() + Math.sin(turn) * p.getY(),
                r * Math.asin((Math.cos(turn) * p.getY() - Math.sin(turn) * p.getX()) / r)});
        }
    }

    @Test
    void exact_cone() throws CannotBeBuilt {
        double angle = Math.toRadians(25);
        unrolls(FormSkin.cone(angle), 2, 0.3, p -> {
            double slant = p.norm();
            double turn = Math.atan2(p.getY(), -p.getZ()) * Math.sin(angle);
            return new double[] {slant * Math.cos(turn), slant * Math.sin(turn)};
        });
    }

    /** Along the middle of a cylinder a quarter round is as long as its arc. */
    @Test
    void exact_straightestLineRoundACylinder() {
        FormSkin skin = FormSkin.cylinder(0.5, 0);
        assertEquals(0.5 * Math.asin(0.3 / 0.5), Sprawl.length(skin, 1, 0, 1, 0.3), 1e-9);
        assertEquals(Math.hypot(0.2, 0.5 * Math.asin(0.3 / 0.5)), Sprawl.length(skin, 1, 0, 1.2, 0.3), 1e-9);
    }

    /** On a ball straightest lines are great circles. */
    @Test
    void exact_straightestLineOnABall() {
        double r = 0.6;
        Vector3D a = Vector3D.of(0.1, 0.05, -Math.sqrt(r * r - 0.0125));
        Vector3D b = Vector3D.of(-0.2, 0.1, -Math.sqrt(r * r - 0.05));
        assertEquals(r * a.angle(b), Sprawl.length(FormSkin.ball(r), a.getX(), a.getY(), b.getX(), b.getY()), 1e-8);
    }

    /**
     * A ball cannot be laid flat. The disc that keeps lengths from the middle has a rim too long by
     * s^3 / (6 R^2) x 2 pi; laid flat with least distortion the diameter grows and the rim shrinks, and the worst
     * length is less wrong than the worst of the plain disc, pi s^3 / (6 R^2) over half the rim's chord at most.
     */
    @Test
    void law_aBallIsStretchedByNoMoreThanItMust() throws CannotBeBuilt {
        double r = 1;
        double s = 0.1;
        AxisFrame frame = AxisFrame.squareToSkin(FormSkin.ball(r), 0, 0);
        Loop disc = Loop.circle(0, 0, s, 1e-4);
        double stretch = Development.of(frame, disc).stretch();
        assertTrue(stretch > 1e-6 && stretch < s * s * s / (6 * r * r), "stretch " + stretch);
        double coarser = Development.of(AxisFrame.squareToSkin(FormSkin.ball(r / 2), 0, 0), disc).stretch();
        assertEquals(4, coarser / stretch, 0.2);
    }
}
