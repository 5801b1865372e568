package org.garboard.drawing;

/** A full circle. */
public record Circle(Layer layer, Point centre, double radius) implements Entity {
    public Circle {
        if (!(radius > 0)) {
            throw new IllegalArgumentException("a circle's radius is positive, not " + radius + " mm");
        }
    }

    @Override
    public Box bounds() {
        return new Box(centre.x(), centre.y(), centre.x(), centre.y()).grownBy(radius);
    }

    @Override
    public Circle movedBy(double dx, double dy) {
        return new Circle(layer, centre.movedBy(dx, dy), radius);
    }

    @Override
    public void drawOn(Canvas canvas) {
        canvas.circle(this);
    }
}
