package org.garboard.acoustics.clearance;

import org.apache.commons.geometry.euclidean.threed.Vector3D;

/**
 * A round bar with flat ends: a shaft, a rudder stock, a propeller's disc.
 *
 * @param name as people call it
 * @param from middle of one end
 * @param to middle of the other
 * @param radius [m]
 */
public record Cylinder(String name, Vector3D from, Vector3D to, double radius) implements Body {

    public Cylinder {
        if (!(radius > 0 && from.distance(to) > 0)) {
            throw new IllegalArgumentException("the cylinder of " + name + " has a radius of " + radius + " m and a length of "
                + from.distance(to) + " m; both must be more than 0");
        }
    }

    @Override
    public void shorten(RayFan fan, double[] reach) {
        double length = from.distance(to);
        Vector3D axis = to.subtract(from).normalize();
        double ax = axis.getX();
        double ay = axis.getY();
        double az = axis.getZ();
        for (int ray = 0; ray < fan.rays(); ray++) {
            double px = fan.start(ray, 0) - from.getX();
            double py = fan.start(ray, 1) - from.getY();
            double pz = fan.start(ray, 2) - from.getZ();
            double dx = fan.direction(ray, 0);
            double dy = fan.direction(ray, 1);
            double dz = fan.direction(ray, 2);
            double start = px * ax + py * ay + pz * az;
            double run = dx * ax + dy * ay + dz * az;
            double enters = 0;
            double leaves = reach[ray];
            if (run == 0) {
                leaves = start < 0 || start > length ? Double.NEGATIVE_INFINITY : leaves;
            } else {
                double one = -start / run;
                double other = (length - start) / run;
                enters = Math.max(enters, Math.min(one, other));
                leaves = Math.min(leaves, Math.max(one, other));
            }
            double a = Math.max(0, 1 - run * run);
            double b = px * dx + py * dy + pz * dz - start * run;
            double c = px * px + py * py + pz * pz - start * start - radius * radius;
            double root = b * b - a * c;
            if (a == 0) {
                leaves = c > 0 ? Double.NEGATIVE_INFINITY : leaves;
            } else if (root < 0) {
                leaves = Double.NEGATIVE_INFINITY;
            } else {
                enters = Math.max(enters, (-b - Math.sqrt(root)) / a);
                leaves = Math.min(leaves, (-b + Math.sqrt(root)) / a);
            }
            if (enters <= leaves) {
                reach[ray] = enters;
            }
        }
    }
}
