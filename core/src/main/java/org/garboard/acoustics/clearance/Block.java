package org.garboard.acoustics.clearance;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A box that stands any way: a rudder, a keel, a piece of a strake.
 *
 * @param name as people call it
 * @param middle of it
 * @param along along the first side, half as long as it
 * @param across along the second, square to the first, half as long
 * @param up along the third, square to both, half as long
 */
public record Block(String name, Vector3D middle, Vector3D along, Vector3D across, Vector3D up) implements Body {
    private static final double SQUARE = 1e-9;

    public Block {
        if (!(along.norm() > 0 && across.norm() > 0 && up.norm() > 0)) {
            throw new IllegalArgumentException("the box of " + name + " has a side of no length");
        }
        if (Math.abs(along.dot(across)) > SQUARE || Math.abs(along.dot(up)) > SQUARE || Math.abs(across.dot(up)) > SQUARE) {
            throw new IllegalArgumentException("the sides of the box of " + name + " do not stand square to each other");
        }
    }

    /** Sides fore and aft, athwart and plumb, between two corners. */
    public static Block upright(String name, Vector3D low, Vector3D high) {
        return new Block(name, low.lerp(high, 0.5), Vector3D.of((high.getX() - low.getX()) / 2, 0, 0),
            Vector3D.of(0, (high.getY() - low.getY()) / 2, 0), Vector3D.of(0, 0, (high.getZ() - low.getZ()) / 2));
    }

    @Override
    public void shorten(RayFan fan, double[] reach) {
        double[] axes = {along.getX(), along.getY(), along.getZ(), across.getX(), across.getY(), across.getZ(),
            up.getX(), up.getY(), up.getZ()};
        double[] square = {along.normSq(), across.normSq(), up.normSq()};
        double[] from = {middle.getX(), middle.getY(), middle.getZ()};
        for (int ray = 0; ray < fan.rays(); ray++) {
            double enters = 0;
            double leaves = reach[ray];
            for (int side = 0; side < 3 && enters <= leaves; side++) {
                double start = 0;
                double run = 0;
                for (int i = 0; i < 3; i++) {
                    start += (fan.start(ray, i) - from[i]) * axes[3 * side + i];
                    run += fan.direction(ray, i) * axes[3 * side + i];
                }
                // in halves of the side; a ray along the slab gives infinities, which the comparisons take
                double one = (-square[side] - start) / run;
                double other = (square[side] - start) / run;
                if (run == 0) {
                    leaves = Math.abs(start) > square[side] ? Double.NEGATIVE_INFINITY : leaves;
                } else {
                    enters = Math.max(enters, Math.min(one, other));
                    leaves = Math.min(leaves, Math.max(one, other));
                }
            }
            if (enters <= leaves) {
                reach[ray] = enters;
            }
        }
    }
}
