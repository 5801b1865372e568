package org.garboard.flow.attitude;

import java.util.List;
import org.apache.commons.geometry.euclidean.twod.Vector2D;

/**
 * Where the water meets a planing bottom, starboard in plan, from the keel out to the chine, or with dry chines to the
 * after end of the bottom; port mirrors it.
 * Aft of it the bottom is in solid water.
 *
 * @param points (x, y) in the hull frame [m], y rising
 */
public record StagnationLine(List<Vector2D> points) {
    public StagnationLine {
        points = List.copyOf(points);
    }

    /** x on the keel [m]. */
    public double atKeel() {
        return points.get(0).getX();
    }

    /** x of its outer end [m]: on the chine, where that is wet. */
    public double atChine() {
        return aftermost();
    }

    /** x of its outer end [m]. */
    public double aftermost() {
        return points.get(points.size() - 1).getX();
    }

    /** Half-breadth of its outer end [m]. */
    public double outermost() {
        return points.get(points.size() - 1).getY();
    }

    /** x at a half-breadth [m]; NaN outside its outer end. */
    public double x(double y) {
        double side = Math.abs(y);
        for (int i = 1; i < points.size(); i++) {
            Vector2D inner = points.get(i - 1);
            Vector2D outer = points.get(i);
            if (side <= outer.getY()) {
                double width = outer.getY() - inner.getY();
                return width > 0 ? inner.getX() + (outer.getX() - inner.getX()) * (side - inner.getY()) / width : outer.getX();
            }
        }
        return Double.NaN;
    }
}
