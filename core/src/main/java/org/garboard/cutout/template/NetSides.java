package org.garboard.cutout.template;

import java.util.Arrays;
import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.CannotBeBuilt;
import org.garboard.cutout.skin.AxisFrame;
import org.garboard.cutout.skin.Skin;

/** How long the sides of a net are along the skin: arcs, from how far the normal turns along them. */
final class NetSides implements Relaxation.Length {
    /** Normals are taken so far inside a triangle, off edges of the skin [m]. */
    private static final double INSIDE = 1e-6;

    private final SkinNet net;
    private final AxisFrame frame;
    private final double[] places;
    /** Unit normals at each triangle's three corners. */
    private final double[] normals;

    NetSides(SkinNet net, AxisFrame frame) throws CannotBeBuilt {
        this.net = net;
        this.frame = frame;
        this.places = new double[3 * net.points()];
        this.normals = new double[9 * net.triangles()];
        for (int i = 0; i < net.points(); i++) {
            put(places, 3 * i, onSkin(net.u(i), net.v(i)));
        }
        double[] face = new double[Skin.SIZE];
        for (int t = 0; t < net.triangles(); t++) {
            double u = (net.u(net.corner(t, 0)) + net.u(net.corner(t, 1)) + net.u(net.corner(t, 2))) / 3;
            double v = (net.v(net.corner(t, 0)) + net.v(net.corner(t, 1)) + net.v(net.corner(t, 2))) / 3;
            for (int k = 0; k < 3; k++) {
                int corner = net.corner(t, k);
                double share = Math.min(1, INSIDE / Math.hypot(u - net.u(corner), v - net.v(corner)));
                Vector3D near = onSkin(net.u(corner) + share * (u - net.u(corner)), net.v(corner) + share * (v - net.v(corner)));
                if (!frame.skin().at(near.getX(), near.getY(), face)) {
                    throw offSkin();
                }
                put(normals, 9 * t + 3 * k, Vector3D.of(-face[1], -face[2], 1).normalize());
            }
        }
    }

    static CannotBeBuilt offSkin() {
        return new CannotBeBuilt("a template runs off the skin", "a smaller part, or a site farther inside the bottom");
    }

    private Vector3D onSkin(double u, double v) throws CannotBeBuilt {
        double w = frame.outside(u, v);
        if (w != w) {
            throw offSkin();
        }
        return frame.toHull(u, v, w);
    }

    private static void put(double[] into, int at, Vector3D place) {
        into[at] = place.getX();
        into[at + 1] = place.getY();
        into[at + 2] = place.getZ();
    }

    @Override
    public double of(int triangle, int k) {
        int next = (k + 1) % 3;
        double[] side = new double[3];
        double square = 0;
        double turn = 0;
        for (int i = 0; i < 3; i++) {
            side[i] = places[3 * net.corner(triangle, next) + i] - places[3 * net.corner(triangle, k) + i];
            square += side[i] * side[i];
            turn += side[i] * (normals[9 * triangle + 3 * next + i] - normals[9 * triangle + 3 * k + i]);
        }
        double chord = Math.sqrt(square);
        double half = Math.asin(Math.max(-1, Math.min(1, turn / chord / 2)));
        return Math.abs(half) < 1e-6 ? chord : chord * half / Math.sin(half);
    }

    /** Of a point of the net, hull frame. */
    Vector3D place(int point) {
        double[] at = Arrays.copyOfRange(places, 3 * point, 3 * point + 3);
        return Vector3D.of(at);
    }
}
