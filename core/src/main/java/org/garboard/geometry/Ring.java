package org.garboard.geometry;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * A closed line in the plane, last point not repeated.
 *
 * @param points in order
 */
public record Ring(List<Vector2D> points) {
    public Ring {
        points = List.copyOf(points);
        if (points.size() < 3) {
            throw new IllegalArgumentException("a ring of " + points.size() + " point(s); three are the least");
        }
    }

    /** Area by the shoelace formula, positive when the ring runs counter-clockwise. */
    public double area() {
        Vector2D origin = points.get(0);
        double twice = 0;
        for (int i = 1; i + 1 < points.size(); i++) {
            twice += points.get(i).subtract(origin).signedArea(points.get(i + 1).subtract(origin));
        }
        return twice / 2;
    }

    /**
     * The ring with fewer points: every point dropped lies within the tolerance of the side that
     * replaces it (Ramer, Computer Graphics and Image Processing 1, 1972; Douglas and Peucker, The
     * Canadian Cartographer 10, 1973; from memory).
     */
    public Ring simplified(double tolerance) {
        boolean[] kept = new boolean[points.size() + 1];
        int far = farthestFromFirst();
        kept[0] = true;
        kept[far] = true;
        keepBetween(0, far, tolerance, kept);
        keepBetween(far, points.size(), tolerance, kept);
        List<Vector2D> few = new ArrayList<>();
        for (int i = 0; i < points.size(); i++) {
            if (kept[i]) {
                few.add(points.get(i));
            }
        }
        return few.size() < 3 ? this : new Ring(few);
    }

    private int farthestFromFirst() {
        int far = 1;
        for (int i = 2; i < points.size(); i++) {
            if (points.get(0).distance(points.get(i)) > points.get(0).distance(points.get(far))) {
                far = i;
            }
        }
        return far;
    }

    private void keepBetween(int from, int to, double tolerance, boolean[] kept) {
        List<int[]> open = new ArrayList<>();
        open.add(new int[] {from, to});
        while (!open.isEmpty()) {
            int[] span = open.remove(open.size() - 1);
            int far = -1;
            double most = tolerance;
            for (int i = span[0] + 1; i < span[1]; i++) {
                double off = distance(points.get(i), points.get(span[0]), points.get(span[1] % points.size()));
                if (off > most) {
                    most = off;
                    far = i;
                }
            }
            if (far >= 0) {
                kept[far] = true;
                open.add(new int[] {span[0], far});
                open.add(new int[] {far, span[1]});
            }
        }
    }

    /** Distance of a point from the straight between two others. */
    private static double distance(Vector2D point, Vector2D from, Vector2D to) {
        Vector2D side = to.subtract(from);
        Vector2D off = point.subtract(from);
        double square = side.normSq();
        double along = square == 0 ? 0 : Math.max(0, Math.min(1, off.dot(side) / square));
        return off.subtract(side.multiply(along)).norm();
    }
}
