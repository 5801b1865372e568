package org.garboard.drawing;

import java.util.List;

/** A filled triangle or four-sided figure, corners in order round it. */
public record Solid(Layer layer, List<Point> corners) implements Entity {

    /** ISO 129-1: a filled arrow head opens 15 degrees. */
    private static final double HALF_OPENING_DEG = 7.5;

    public Solid {
        corners = List.copyOf(corners);
        if (corners.size() != 3 && corners.size() != 4) {
            throw new IllegalArgumentException("a filled figure has 3 or 4 corners, not " + corners.size());
        }
    }

    /** An arrow head. */
    public static Solid arrow(Layer layer, Point tip, double directionDeg, double length) {
        double slant = length / Math.cos(Math.toRadians(HALF_OPENING_DEG));
        return new Solid(layer, List.of(tip,
                tip.towards(directionDeg + 180 - HALF_OPENING_DEG, slant),
                tip.towards(directionDeg + 180 + HALF_OPENING_DEG, slant)));
    }

    @Override
    public Box bounds() {
        return Box.around(corners);
    }

    @Override
    public Solid movedBy(double dx, double dy) {
        return new Solid(layer, corners.stream().map(corner -> corner.movedBy(dx, dy)).toList());
    }

    @Override
    public void drawOn(Canvas canvas) {
        canvas.solid(this);
    }
}
