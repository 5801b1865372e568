package org.garboard.flow.shadow;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;
import org.garboard.geometry.Ring;

/** A part of the bottom in plan: its outline, and places inside that are not of it. */
public record PlanRegion(Ring outline, List<Ring> holes) {
    public PlanRegion {
        holes = List.copyOf(holes);
    }

    /** [m2] */
    public double area() {
        return Math.abs(outline.area()) - holes.stream().mapToDouble(hole -> Math.abs(hole.area())).sum();
    }

    public boolean contains(double x, double y) {
        return within(outline, x, y) && holes.stream().noneMatch(hole -> within(hole, x, y));
    }

    /** An odd number of sides lies to one side of a place within. */
    private static boolean within(Ring ring, double x, double y) {
        boolean inside = false;
        List<Vector2D> points = ring.points();
        Vector2D before = points.get(points.size() - 1);
        for (Vector2D point : points) {
            if (point.getY() > y != before.getY() > y
                    && x < (before.getX() - point.getX()) * (y - point.getY()) / (before.getY() - point.getY()) + point.getX()) {
                inside = !inside;
            }
            before = point;
        }
        return inside;
    }
}
