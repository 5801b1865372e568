package org.garboard.flow.streams;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The way of one drop of water along the hull.
 *
 * @param points from forward aft, at least one
 * @param seed index of the place it was asked through
 * @param ahead whether it was followed to where the hull's wet skin begins
 * @param abaft whether it was followed to where that ends
 */
public record Streamline(List<StreamPoint> points, int seed, Followed ahead, Followed abaft) implements Traced {

    /** How far a line was followed. */
    public enum Followed {
        TO_THE_END,
        /** It ends amid the skin: the water stands still there, or goes round and round. */
        LOST
    }

    public Streamline {
        points = List.copyOf(points);
        if (seed < 0 || seed >= points.size()) {
            throw new IllegalArgumentException("seed " + seed + " of a line of " + points.size() + " point(s)");
        }
    }

    /** Where it was lost, in words; empty where it was followed from end to end. */
    public Optional<String> lost() {
        if (ahead == Followed.LOST) {
            return Optional.of(lost(points.get(0), "ahead"));
        }
        return abaft == Followed.LOST ? Optional.of(lost(points.get(points.size() - 1), "abaft")) : Optional.empty();
    }

    private static String lost(StreamPoint end, String where) {
        return String.format(Locale.ROOT, "a streamline cannot be followed %s of x = %.2f m, y = %.2f m, where the water stands still or goes round", where, end.x(), end.y());
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
