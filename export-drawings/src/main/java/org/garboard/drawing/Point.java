package org.garboard.drawing;

import java.util.Locale;

/** A place on the paper [mm], see the package's frame. */
public record Point(double x, double y) {
    public Point {
        if (!Double.isFinite(x) || !Double.isFinite(y)) {
            throw new IllegalArgumentException(String.format(Locale.ROOT,
                    "a point on the paper needs two finite numbers, not (%s, %s) mm", x, y));
        }
    }

    public Point movedBy(double dx, double dy) {
        return new Point(x + dx, y + dy);
    }

    /** The point at a distance [mm] in a direction [deg] from here. */
    public Point towards(double directionDeg, double distance) {
        double radians = Math.toRadians(directionDeg);
        return new Point(x + distance * Math.cos(radians), y + distance * Math.sin(radians));
    }

    public double distanceTo(Point other) {
        return Math.hypot(other.x - x, other.y - y);
    }

    /** Direction from here to the other [deg], -180 to 180. */
    public double directionTo(Point other) {
        return Math.toDegrees(Math.atan2(other.y - y, other.x - x));
    }

    public Point midwayTo(Point other) {
        return new Point((x + other.x) / 2, (y + other.y) / 2);
    }
}
