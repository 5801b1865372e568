package org.garboard.cutout.skin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;

/** Frames on planes, cylinders and balls against closed forms. */
class AxisFrameTest {
    private static final double CLOSE = 1e-9;

    private static void assertSame(Vector3D wanted, Vector3D found) {
        assertEquals(0, wanted.distance(found), CLOSE, wanted + " but was " + found);
    }

    private static void assertRightHanded(AxisFrame frame) {
        assertEquals(1, frame.along().norm(), CLOSE);
        assertEquals(1, frame.across().norm(), CLOSE);
        assertEquals(0, frame.along().dot(frame.across()), CLOSE);
        assertSame(frame.up(), frame.along().cross(frame.across()));
        assertTrue(frame.up().getZ() > 0);
    }

    @Test
    void exact_squareToAPlane() {
        double aft = 0.1;
        double out = 0.4;
        AxisFrame frame = AxisFrame.squareToSkin(FormSkin.plane(aft, out), 2, 1);
        assertRightHanded(frame);
        assertSame(Vector3D.of(2, 1, 0.6), frame.origin());
        double size = Math.sqrt(1 + aft * aft + out * out);
        assertSame(Vector3D.of(-aft / size, -out / size, 1 / size), frame.up());
        assertSame(frame.up(), frame.normal());
        assertSame(Vector3D.of(1, 0, aft).normalize(), frame.along());
        for (double thickness : new double[] {0, 0.012}) {
            assertEquals(thickness, frame.inside(0.3, -0.2, thickness), CLOSE);
            assertEquals(thickness, frame.inPlane(0.3, -0.2, thickness), CLOSE);
        }
        assertEquals(0, frame.touching(0.3, -0.2), CLOSE);
    }

    /** Its after end goes down by an angle about the axis athwart, which stays in the skin. */
    @Test
    void exact_leaningAft() {
        double down = Math.toRadians(2);
        AxisFrame frame = AxisFrame.leaningAft(FormSkin.plane(0, 0.4), 2, 1, down);
        assertRightHanded(frame);
        AxisFrame square = AxisFrame.squareToSkin(FormSkin.plane(0, 0.4), 2, 1);
        assertSame(square.across(), frame.across());
        assertEquals(Math.cos(down), frame.along().dot(square.along()), CLOSE);
        assertEquals(-Math.sin(down), frame.along().dot(square.up()), CLOSE);
        // the skin stands above the plane by the sine aft of the origin
        assertEquals(0.5 * Math.tan(down), frame.outside(0.5, 0), CLOSE);
        assertEquals(0, frame.outside(0, 0.5), CLOSE);
        assertEquals(0.5 * Math.tan(down), frame.touching(0.5, 0.3), CLOSE);
        assertEquals(0.5 * Math.tan(down) + 0.01 / Math.cos(down), frame.inPlane(0.5, 0, 0.01), CLOSE);
        assertEquals(0.5 * Math.tan(down) + 0.01 / Math.cos(down), frame.inside(0.5, 0, 0.01), CLOSE);
    }

    /** Level athwart whatever the bottom does, turned in its own plane by a yaw to starboard. */
    @Test
    void exact_levelAthwart() {
        double slope = Math.toRadians(3);
        double yaw = Math.toRadians(20);
        AxisFrame frame = AxisFrame.levelAthwart(FormSkin.plane(0, 0.4), 2, 1, slope, yaw);
        assertRightHanded(frame);
        assertSame(Vector3D.of(-Math.sin(slope), 0, Math.cos(slope)), frame.up());
        assertEquals(Math.sin(yaw), frame.along().getY(), CLOSE);
        assertEquals(Math.cos(yaw), frame.across().getY(), CLOSE);
        AxisFrame straight = AxisFrame.levelAthwart(FormSkin.plane(0, 0.4), 2, 1, 0, 0);
        assertEquals(0.2, straight.outside(0.7, 0.5), CLOSE);
        assertSame(Vector3D.of(2.7, 1.5, 0.8), straight.toHull(0.7, 0.5, 0.4));
    }

    /** Inside a cylinder of radius r a shell's inside is a cylinder of r - t; the plane that touches differs by its bend. */
    @Test
    void exact_insideACylinder() {
        double r = 1.2;
        double t = 0.05;
        AxisFrame frame = AxisFrame.levelAthwart(FormSkin.cylinder(r, 0), 0, 0, 0, 0);
        for (double v : new double[] {0, 0.1, -0.3}) {
            assertEquals(r - Math.sqrt(r * r - v * v), frame.outside(0.4, v), CLOSE);
            assertEquals(r - Math.sqrt((r - t) * (r - t) - v * v), frame.inside(0.4, v, t), CLOSE);
            double lean = Math.asin(v / r);
            assertEquals(r - Math.sqrt(r * r - v * v) + t / Math.cos(lean), frame.inPlane(0.4, v, t), CLOSE);
        }
        assertEquals(1 / r, frame.bend(0.1, 0.1), CLOSE);
    }

    @Test
    void exact_insideABall() {
        double r = 2;
        double t = 0.1;
        AxisFrame frame = AxisFrame.squareToSkin(FormSkin.ball(r), 0.3, 0.4);
        // the axis goes through the middle, so the frame sees the ball as from its lowest point
        for (double u : new double[] {0, 0.2, -0.5}) {
            assertEquals(r - Math.sqrt(r * r - u * u - 0.01), frame.outside(u, 0.1), 1e-8);
            assertEquals(r - Math.sqrt((r - t) * (r - t) - u * u - 0.01), frame.inside(u, 0.1, t), 1e-8);
        }
        InsideSkin inside = new InsideSkin(FormSkin.ball(r), t);
        double[] face = new double[Skin.SIZE];
        assertTrue(inside.at(0.3, 0.4, face));
        assertEquals(r - Math.sqrt((r - t) * (r - t) - 0.25), face[0], CLOSE);
        assertEquals(0.3 / Math.sqrt((r - t) * (r - t) - 0.25), face[1], CLOSE);
        assertEquals(0.4 / Math.sqrt((r - t) * (r - t) - 0.25), face[2], CLOSE);
        assertEquals(1 / (r - t), face[3], CLOSE);
        assertTrue(!inside.at(3, 0, face));
    }

    @Test
    void badInput_offTheSkin() {
        FormSkin ball = FormSkin.ball(1);
        assertEquals("no skin at x = 2.0 m, y = 0.0 m", assertThrows(IllegalArgumentException.class,
            () -> AxisFrame.squareToSkin(ball, 2, 0)).getMessage());
        AxisFrame frame = AxisFrame.squareToSkin(ball, 0, 0);
        assertTrue(Double.isNaN(frame.outside(2, 0)) && Double.isNaN(frame.inPlane(2, 0, 0.01)) && Double.isNaN(frame.bend(2, 0)));
    }
}
