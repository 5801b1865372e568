package org.garboard.cutout.template;

import org.apache.commons.geometry.euclidean.threed.Vector3D;
import org.garboard.cutout.skin.Skin;

/**
 * Skin laid flat from one place: each place goes where the straightest line to it starts out, as far as that line
 * is long. Lengths from the middle are true everywhere, all lengths where the skin is developable.
 */
final class Sprawl {
    private static final double CLOSE = 1e-11;
    private static final int MOST_SHOTS = 30;

    private final Geodesic line;
    private final double x;
    private final double y;
    private final Vector3D along;
    private final Vector3D across;
    private double u;
    private double v;

    /** @param along unit vector in the plane that touches the skin at the place */
    Sprawl(Skin skin, double x, double y, Vector3D along) {
        double[] face = new double[Skin.SIZE];
        if (!skin.at(x, y, face)) {
            throw new IllegalArgumentException("no skin at x = " + x + " m, y = " + y + " m");
        }
        this.line = new Geodesic(skin);
        this.x = x;
        this.y = y;
        this.along = along;
        this.across = Vector3D.of(-face[1], -face[2], 1).normalize().cross(along);
    }

    /** With along in the plane y = constant. */
    static Sprawl from(Skin skin, double x, double y) {
        double[] face = new double[Skin.SIZE];
        if (!skin.at(x, y, face)) {
            throw new IllegalArgumentException("no skin at x = " + x + " m, y = " + y + " m");
        }
        return new Sprawl(skin, x, y, Vector3D.of(1, 0, face[1]).normalize());
    }

    /** Finds where a place of the skin goes; false where no line reaches it. */
    boolean layFlat(double toX, double toY) {
        double determinant = along.getX() * across.getY() - along.getY() * across.getX();
        u = 0;
        v = 0;
        double missX = toX - x;
        double missY = toY - y;
        for (int i = 0; i < MOST_SHOTS; i++) {
            u += (missX * across.getY() - missY * across.getX()) / determinant;
            v += (missY * along.getX() - missX * along.getY()) / determinant;
            if (!spread(u, v)) {
                return false;
            }
            missX = toX - line.x();
            missY = toY - line.y();
            if (Math.abs(missX) + Math.abs(missY) < CLOSE) {
                return true;
            }
        }
        return false;
    }

    /** The other way: follows the line to a place of the flat; false where it leaves the skin. */
    boolean spread(double atU, double atV) {
        return line.shoot(x, y, atU * along.getX() + atV * across.getX(), atU * along.getY() + atV * across.getY());
    }

    double u() {
        return u;
    }

    double v() {
        return v;
    }

    /** Where {@link #spread} came to. */
    double x() {
        return line.x();
    }

    double y() {
        return line.y();
    }

    /** Length of the straightest line to a place of the skin [m]; NaN where none reaches it. */
    static double length(Skin skin, double fromX, double fromY, double toX, double toY) {
        Sprawl sprawl = from(skin, fromX, fromY);
        return sprawl.layFlat(toX, toY) ? Math.hypot(sprawl.u, sprawl.v) : Double.NaN;
    }
}
