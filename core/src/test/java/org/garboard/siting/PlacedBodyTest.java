package org.garboard.siting;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalDouble;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.acoustics.clearance.Block;
import org.garboard.acoustics.clearance.FeatureBodies;
import org.garboard.craft.BottomFeatures;
import org.garboard.craft.Fitting;
import org.garboard.craft.LaidFeature;
import org.garboard.craft.Sides;
import org.garboard.craft.Transducer;
import org.garboard.craft.TransducerDetails;
import org.garboard.geometry.Quad;
import org.garboard.hull.Hull;
import org.garboard.mount.BlockSize;
import org.garboard.mount.FairedThroughHull;
import org.garboard.mount.FlushThroughHull;
import org.garboard.mount.InHull;
import org.garboard.mount.Installation;
import org.garboard.mount.KeelPocket;
import org.garboard.mount.Limits;
import org.garboard.mount.Mount;
import org.garboard.mount.PocketWish;
import org.garboard.mount.TransomMount;
import org.garboard.units.Angle;
import org.junit.jupiter.api.Test;

/** What a transducer that has been placed is to the others: under a wedge of 20 deg, 6 m long. */
class PlacedBodyTest {
    private static final Hull HULL = Boats.prismaticV(20);
    private static final double RISE = Math.tan(Math.toRadians(20));
    private static final Transducer BODY = new Transducer("one", 0.12, 0.08, 0.03, 0, 0.02, Angle.ofDegrees(0));
    /** 0.42 m long, 0.14 m wide, its face 80 mm below the skin at the body's middle, its tail 5 mm lower. */
    private static final BlockSize BLOCK = new BlockSize(0.42, 0.14, 0.006, 0.01, 0.05, 0.126, 0.005, 0.08);
    private static final Installation INSTALLATION = new Installation(BODY, TransducerDetails.UNTOLD,
        new PocketWish(OptionalDouble.empty(), 0.005, 8), BLOCK, 0.015, 0.003, Limits.OWN);

    private static LaidFeature at(Mount mount, double x, double y) {
        SitingTask task = new SitingTask(0.5, INSTALLATION, List.of(mount), Mark.FIVE_MILLIMETRES, BottomFeatures.NOT_LISTED);
        return Siting.laid(HULL, task, mount, x, y);
    }

    private static void assertCovers(LaidFeature laid, double fromX, double toX, double fromY, double toY) {
        Quad cover = laid.cover().get(0);
        double[] told = {cover.x(0), cover.y(0), cover.x(2), cover.y(2)};
        double[] expected = {fromX, fromY, toX, toY};
        for (int i = 0; i < told.length; i++) {
            assertEquals(expected[i], told[i], 1e-9);
        }
    }

    /** The block from nose to tail, and the level of its tail: so high above it stands the lowest skin over it. */
    @Test
    void exact_aBlockHangsByItsFace() {
        LaidFeature laid = at(new FairedThroughHull(), 3, -0.5);
        assertEquals("one", laid.name());
        assertEquals(Sides.PORT, laid.sides());
        assertTrue(laid.is(Fitting.Type.TRANSDUCER));
        assertCovers(laid, 3 - 0.126, 3 + 0.294, 0.43, 0.57);
        assertEquals(0.085 - 0.07 * RISE, laid.height().orElseThrow(), 1e-6);
    }

    @Test
    void exact_whatLiesInTheSkinHangsByNothing() {
        LaidFeature flush = at(new FlushThroughHull(), 3, 0.5);
        assertEquals(Sides.STARBOARD, flush.sides());
        assertCovers(flush, 2.94, 3.06, 0.46, 0.54);
        assertEquals(0, flush.height().orElseThrow());
        LaidFeature inside = at(new InHull(), 3, 0.5);
        assertTrue(inside.is(Fitting.Type.IN_HULL_TRANSDUCER));
        assertCovers(inside, 2.915, 3.085, 0.435, 0.565);
    }

    /** With its ramps: walls and ends as the pocket's demands take them. */
    @Test
    void exact_aPocketCoversItsRamps() {
        LaidFeature pocket = at(new KeelPocket(), 3, 0);
        assertEquals(Sides.BOTH, pocket.sides());
        double reach = 0.065 + new KeelPocket().ramp(INSTALLATION, 0.045 * RISE);
        assertCovers(pocket, 3 - reach, 3 + reach, -0.045, 0.045);
        assertEquals(0, pocket.height().orElseThrow());
    }

    /** Abaft of the transom its face is 3 mm below the lowest of the edge; its box for rays goes on level with the edge, all along it. */
    @Test
    void exact_aTransomMountHangsBehind() {
        LaidFeature laid = at(new TransomMount(), 6, 0.5);
        assertCovers(laid, 6, 6.12, 0.46, 0.54);
        assertEquals(0.003, laid.height().orElseThrow(), 1e-9);
        FeatureBodies bodies = FeatureBodies.of(HULL, List.of(laid));
        assertEquals(List.of(), bodies.untold());
        Block last = bodies.bodies().get(bodies.bodies().size() - 1);
        Vector3D low = last.middle().subtract(last.up());
        assertEquals(0.46 * RISE - 0.003, low.getZ(), 1e-9);
        assertEquals(6.12, last.middle().getX() + last.along().getX(), 1e-9);
    }

    @Test
    void refusesAPlaceWithoutASeat() {
        assertThrows(IllegalArgumentException.class, () -> at(new FlushThroughHull(), 3, 40));
    }
}
