package org.garboard.flow.streams;

import java.util.List;

/**
 * The way of one drop of water along the hull.
 *
 * @param points from forward aft, at least one
 * @param seed index of the place it was asked through
 */
public record Streamline(List<StreamPoint> points, int seed) implements Traced {
    public Streamline {
        points = List.copyOf(points);
        if (seed < 0 || seed >= points.size()) {
            throw new IllegalArgumentException("seed " + seed + " of a line of " + points.size() + " point(s)");
        }
    }

    /** The place it was asked through. */
    public StreamPoint through() {
        return points.get(seed);
    }

    /** The part from that place aft. */
    public List<StreamPoint> down() {
        return points.subList(seed, points.size());
    }

    /** Where it crosses a station, between its points; the ends beyond them. */
    public StreamPoint at(double x) {
        for (int i = 1; i < points.size(); i++) {
            StreamPoint one = points.get(i - 1);
            StreamPoint other = points.get(i);
            if (x >= one.x() && x <= other.x() && other.x() > one.x()) {
                double s = (x - one.x()) / (other.x() - one.x());
                return new StreamPoint(x, one.y() + s * (other.y() - one.y()), one.z() + s * (other.z() - one.z()),
                    one.run() + s * (other.run() - one.run()), one.speed() + s * (other.speed() - one.speed()));
            }
        }
        return x < points.get(0).x() ? points.get(0) : points.get(points.size() - 1);
    }

    /** How near it comes to a place [m]. */
    public double distance(double x, double y, double z) {
        StreamPoint place = new StreamPoint(x, y, z, 0, 0);
        double nearest = points.get(0).distance(place);
        for (int i = 1; i < points.size(); i++) {
            nearest = Math.min(nearest, distance(place, points.get(i - 1), points.get(i)));
        }
        return nearest;
    }

    private static double distance(StreamPoint place, StreamPoint one, StreamPoint other) {
        double dx = other.x() - one.x();
        double dy = other.y() - one.y();
        double dz = other.z() - one.z();
        double square = dx * dx + dy * dy + dz * dz;
        double along = (place.x() - one.x()) * dx + (place.y() - one.y()) * dy + (place.z() - one.z()) * dz;
        double s = square > 0 ? Math.max(0, Math.min(1, along / square)) : 0;
        return place.distance(new StreamPoint(one.x() + s * dx, one.y() + s * dy, one.z() + s * dz, 0, 0));
    }
}
