package org.garboard.drawing;

import java.util.ArrayList;
import java.util.List;

/** A circular arc, counter-clockwise from one direction to the other [deg]. */
public record Arc(Layer layer, Point centre, double radius, double startDeg, double endDeg) implements Entity {
    public Arc {
        if (!(radius > 0)) {
            throw new IllegalArgumentException("an arc's radius is positive, not " + radius + " mm");
        }
    }

    /** How far it turns [deg], more than 0 and at most 360. */
    public double sweepDeg() {
        double sweep = (endDeg - startDeg) % 360;
        return sweep > 0 ? sweep : sweep + 360;
    }

    public Point start() {
        return centre.towards(startDeg, radius);
    }

    public Point end() {
        return centre.towards(endDeg, radius);
    }

    @Override
    public Box bounds() {
        List<Point> extremes = new ArrayList<>(List.of(start(), end()));
        double last = startDeg + sweepDeg();
        for (double quadrant = Math.ceil(startDeg / 90) * 90; quadrant < last; quadrant += 90) {
            extremes.add(centre.towards(quadrant, radius));
        }
        return Box.around(extremes);
    }

    @Override
    public Arc movedBy(double dx, double dy) {
        return new Arc(layer, centre.movedBy(dx, dy), radius, startDeg, endDeg);
    }

    @Override
    public void drawOn(Canvas canvas) {
        canvas.arc(this);
    }
}
