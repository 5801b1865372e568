package org.garboard.acoustics.clearance;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.craft.FeaturePlace;
import org.garboard.craft.Fitting;
import org.garboard.craft.Sides;
import org.garboard.craft.Strake;
import org.garboard.hull.Hull;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

class BeamClearanceTest {
    private static final Vector3D DOWN = Vector3D.of(0, 0, -1);
    private static final double RANGE = 10;

    @Test
    void law_everyRayIsOneLongAndWithinTheCone() {
        RayFan fan = RayFan.cone(Vector3D.of(1, 2, 3), DOWN, Vector3D.of(1, -2, -5), 0.04, Angle.ofDegrees(25), 7, 30);
        Vector3D axis = Vector3D.of(1, -2, -5).normalize();
        assertEquals(211, fan.rays());
        double widest = 0;
        for (int ray = 0; ray < fan.rays(); ray++) {
            Vector3D direction = direction(fan, ray);
            assertEquals(1, direction.norm(), 1e-12);
            widest = Math.max(widest, direction.angle(axis));
            Vector3D offset = start(fan, ray).subtract(Vector3D.of(1, 2, 3));
            assertEquals(0, offset.dot(DOWN), 1e-12);
            assertTrue(offset.cross(axis).norm() <= 0.04 + 1e-12);
        }
        assertEquals(25, Math.toDegrees(widest), 1e-6);
    }

    /** Each ray stands for the same solid angle, so the mean of the cosines is that of the cone. */
    @Test
    void exact_raysAreSpreadEvenly() {
        RayFan fan = RayFan.cone(Vector3D.ZERO, DOWN, DOWN, 0, Angle.ofDegrees(40), 2000, 3);
        double sum = 0;
        for (int ray = 0; ray < fan.rays(); ray++) {
            sum -= fan.direction(ray, 2);
        }
        assertEquals((1 + Math.cos(Math.toRadians(40))) / 2, sum / fan.rays(), 1e-4);
    }

    @Test
    void exact_blockMetOnItsFaces() {
        double[] reach = reach(single(Vector3D.of(0, 0, 0), Vector3D.of(0.6, 0, -0.8)),
            Block.upright("keel", Vector3D.of(0, -1, -3), Vector3D.of(5, 1, -2)));
        assertEquals(2 / 0.8, reach[0], 1e-12);
        assertEquals(3 / 0.6, reach(single(Vector3D.of(0, 0, 0), Vector3D.of(0.6, 0, -0.8)),
            Block.upright("keel", Vector3D.of(3, -1, -9), Vector3D.of(5, 1, -1)))[0], 1e-12);
        assertEquals(RANGE, reach(single(Vector3D.ZERO, DOWN), Block.upright("keel", Vector3D.of(0.1, -1, -3), Vector3D.of(5, 1, -2)))[0]);
        assertEquals(0, reach(single(Vector3D.of(1, 0, -2.5), DOWN), Block.upright("keel", Vector3D.of(0.1, -1, -3), Vector3D.of(5, 1, -2)))[0]);
        assertEquals(RANGE, reach(single(Vector3D.ZERO, DOWN), Block.upright("above", Vector3D.of(-1, -1, 1), Vector3D.of(1, 1, 2)))[0]);
    }

    /** A cube of 2 m turned 45 deg about x, its edge up: the ray down meets the edge root 2 above the middle. */
    @Test
    void exact_blockTurned() {
        double h = Math.sqrt(0.5);
        Block cube = new Block("rudder", Vector3D.of(0, 0, -5), Vector3D.of(1, 0, 0), Vector3D.of(0, h, h), Vector3D.of(0, -h, h));
        assertEquals(5 - Math.sqrt(2), reach(single(Vector3D.ZERO, DOWN), cube)[0], 1e-12);
        assertEquals(5 - Math.sqrt(2) + 0.3, reach(single(Vector3D.of(0, 0.3, 0), DOWN), cube)[0], 1e-12);
    }

    @Test
    void exact_cylinderMetRoundAndOnItsEnd() {
        Cylinder shaft = new Cylinder("shaft", Vector3D.of(-2, 0.3, -1), Vector3D.of(2, 0.3, -1), 0.5);
        assertEquals(1 - 0.4, reach(single(Vector3D.ZERO, DOWN), shaft)[0], 1e-12);
        assertEquals(1 / 0.8 - 0.5 / 0.8, reach(single(Vector3D.of(0, 0.3, 0), Vector3D.of(0.6, 0, -0.8)), shaft)[0], 1e-12);
        assertEquals(RANGE, reach(single(Vector3D.of(0, 0.81, 0), DOWN), shaft)[0]);
        assertEquals(RANGE, reach(single(Vector3D.of(2.01, 0.3, 0), DOWN), shaft)[0]);
        Vector3D ahead = Vector3D.of(-1, 0, 0);
        assertEquals(1, reach(single(Vector3D.of(3, 0.3, -1.2), ahead), shaft)[0], 1e-12);
        assertEquals(RANGE, reach(single(Vector3D.of(3, 0.3, -1.6), ahead), shaft)[0]);
        assertEquals(0, reach(single(Vector3D.of(0, 0.3, -1), ahead), shaft)[0], 1e-12);
    }

    /** A face that hangs 0.2 m below a wedge and looks up at it square: the skin is a plane 0.2 cos b away. */
    @Test
    void exact_skinIsAPlane() {
        double b = Math.toRadians(20);
        Hull hull = Hulls.wedge(20);
        Vector3D face = Vector3D.of(3, 0.5, 0.5 * Math.tan(b) - 0.2);
        Vector3D normal = Vector3D.of(0, -Math.sin(b), Math.cos(b));
        RayFan fan = RayFan.cone(face, normal, normal, 0, Angle.ofDegrees(30), 5, 12);
        double[] reach = reach(fan, new OwnSkin(hull));
        for (int ray = 0; ray < fan.rays(); ray++) {
            assertEquals(0.2 * Math.cos(b) / direction(fan, ray).dot(normal), reach[ray], 1e-6);
        }
        BeamClearance clearance = BeamClearance.of(fan, RANGE, List.of(new OwnSkin(hull)));
        assertEquals(1, clearance.blockedShare());
        assertEquals(0.2 * Math.cos(b), clearance.nearest().orElseThrow(), 1e-6);
        assertEquals("the hull", clearance.by());
    }

    @Test
    void exact_boxKeelBesideAFlushFace() {
        Hull hull = Hulls.onBoxKeel(15);
        double y = 0.4;
        double z = (y - 0.15) * Math.tan(Math.toRadians(15));
        for (double lean : new double[] {45, 60, 70}) {
            double sin = Math.sin(Math.toRadians(lean));
            double cos = Math.cos(Math.toRadians(lean));
            double[] reach = reach(single(Vector3D.of(3, y, z), Vector3D.of(0, -sin, -cos)), new OwnSkin(hull));
            double distance = (y - 0.15) / sin;
            assertEquals(z - distance * cos > -0.3 ? distance : RANGE, reach[0], 1e-6, "leaning " + lean);
        }
        assertEquals(RANGE, reach(single(Vector3D.of(3, y, z), Vector3D.of(0, -Math.sin(0.4), -Math.cos(0.4))), new OwnSkin(hull))[0]);
    }

    @Test
    void law_aFlushFaceOnABareWedgeIsClear() {
        for (double deadrise : new double[] {5, 12, 24}) {
            double b = Math.toRadians(deadrise);
            Vector3D skin = Vector3D.of(0, Math.sin(b), -Math.cos(b));
            RayFan fan = RayFan.cone(Vector3D.of(3, 0.4, 0.4 * Math.tan(b)), skin, DOWN, 0.04, Angle.ofDegrees(35), 12, 48);
            BeamClearance clearance = BeamClearance.of(fan, RANGE, List.of(new OwnSkin(Hulls.wedge(deadrise))));
            assertTrue(clearance.isClear(), clearance.toString());
            assertEquals(0, clearance.blockedShare());
            assertEquals("", clearance.by());
        }
    }

    @Test
    void law_portMirrorsStarboard() {
        Hull hull = Hulls.onBoxKeel(15);
        double z = 0.05 * Math.tan(Math.toRadians(15));
        BeamClearance starboard = BeamClearance.of(RayFan.cone(Vector3D.of(3, 0.2, z), DOWN, DOWN, 0.03, Angle.ofDegrees(30), 8, 48), RANGE,
            List.of(new OwnSkin(hull)));
        BeamClearance port = BeamClearance.of(RayFan.cone(Vector3D.of(3, -0.2, z), DOWN, DOWN, 0.03, Angle.ofDegrees(30), 8, 48), RANGE,
            List.of(new OwnSkin(hull)));
        assertTrue(starboard.blockedShare() > 0);
        assertEquals(starboard.blockedShare(), port.blockedShare(), 1e-12);
        assertEquals(starboard.nearest().orElseThrow(), port.nearest().orElseThrow(), 1e-9);
    }

    /** However few rays there are: the fan of a mirrored axis is the mirror image of the fan. */
    @Test
    void law_aMirroredAxisHasAMirroredFan() {
        Block block = Block.upright("block", Vector3D.of(-0.3, 0.05, -1), Vector3D.of(0.2, 0.4, -0.7));
        Block mirrored = Block.upright("block", Vector3D.of(-0.3, -0.4, -1), Vector3D.of(0.2, -0.05, -0.7));
        for (int degrees = 5; degrees < 45; degrees += 5) {
            double sin = Math.sin(Math.toRadians(degrees));
            double cos = Math.cos(Math.toRadians(degrees));
            BeamClearance one = BeamClearance.of(RayFan.cone(Vector3D.ZERO, DOWN, Vector3D.of(0.1, sin, -cos), 0.04, Angle.ofDegrees(12), 2, 7), RANGE, List.of(block));
            BeamClearance other = BeamClearance.of(RayFan.cone(Vector3D.ZERO, DOWN, Vector3D.of(0.1, -sin, -cos), 0.04, Angle.ofDegrees(12), 2, 7), RANGE,
                List.of(mirrored));
            assertEquals(one.blockedShare(), other.blockedShare(), 1e-12);
        }
    }

    @Test
    void exact_strakesHangUnderTheSkin() {
        Hull hull = Hulls.wedge(10);
        Strake strake = new Strake("inner", Sides.BOTH, List.of(place(1, 0.5), place(4, 0.5)), 0.06, 0.04);
        FeatureBodies bodies = FeatureBodies.of(hull, List.of(strake.on(hull)));
        assertEquals(60, bodies.bodies().size());
        double lowest = 0.47 * Math.tan(Math.toRadians(10)) - 0.04;
        Vector3D from = Vector3D.of(2.51, 0.5, -1);
        double[] reach = {RANGE, RANGE, RANGE, RANGE};
        bodies.bodies().forEach(body -> body.shorten(single(from, Vector3D.of(0, 0, 1)), reach));
        assertEquals(1 + lowest, reach[0], 1e-9);
        double[] port = {RANGE, RANGE, RANGE, RANGE};
        bodies.bodies().forEach(body -> body.shorten(single(Vector3D.of(2.51, -0.5, -1), Vector3D.of(0, 0, 1)), port));
        assertEquals(reach[0], port[0], 1e-12);
    }

    @Test
    void whatIsNotToldIsNamed() {
        Hull hull = Hulls.wedge(10);
        Fitting strut = new Fitting("strut", Fitting.Type.STRUT, Sides.PORT, place(4, 0.3), 0.1, 0.05, Optional.empty());
        Fitting drain = new Fitting("drain", Fitting.Type.DRAIN, Sides.PORT, place(5, 0.3), 0.1, 0.05, Optional.of(0.0));
        FeatureBodies bodies = FeatureBodies.of(hull, List.of(strut.on(hull), drain.on(hull)));
        assertEquals(List.of("strut"), bodies.untold());
        assertEquals(List.of(), bodies.bodies());
    }

    @Test
    void refusesConesThatAreNone() {
        assertThrows(IllegalArgumentException.class, () -> RayFan.cone(Vector3D.ZERO, DOWN, DOWN, 0, Angle.ofDegrees(0), 4, 12));
        assertThrows(IllegalArgumentException.class, () -> new Block("b", Vector3D.ZERO, Vector3D.of(1, 0, 0), Vector3D.of(1, 1, 0), Vector3D.of(0, 0, 1)));
        assertThrows(IllegalArgumentException.class, () -> new Cylinder("c", Vector3D.ZERO, Vector3D.ZERO, 1));
    }

    private static FeaturePlace place(double x, double y) {
        return new FeaturePlace(FeaturePlace.Datum.AFT_OF_ORIGIN, x, FeaturePlace.Measure.HALF_BREADTH, y);
    }

    /** A fan whose first ray is the axis; the rest all but coincide with it. */
    private static RayFan single(Vector3D from, Vector3D direction) {
        return RayFan.cone(from, direction, direction, 0, Angle.ofDegrees(1e-7), 1, 3);
    }

    private static double[] reach(RayFan fan, Body body) {
        double[] reach = new double[fan.rays()];
        Arrays.fill(reach, RANGE);
        body.shorten(fan, reach);
        return reach;
    }

    private static Vector3D start(RayFan fan, int ray) {
        return Vector3D.of(fan.start(ray, 0), fan.start(ray, 1), fan.start(ray, 2));
    }

    private static Vector3D direction(RayFan fan, int ray) {
        return Vector3D.of(fan.direction(ray, 0), fan.direction(ray, 1), fan.direction(ray, 2));
    }
}
