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

    /** A place well within, where a line from its name may end. */
    public Vector2D inside() {
        return new Plan().inside(this);
    }

    /** On the other side. */
    public PlanRegion mirrored() {
        return new PlanRegion(mirrored(outline), holes.stream().map(PlanRegion::mirrored).toList());
    }

    private static Ring mirrored(Ring ring) {
        return new Ring(ring.points().stream().map(point -> Vector2D.of(point.getX(), -point.getY())).toList());
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
