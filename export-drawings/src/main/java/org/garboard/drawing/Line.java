package org.garboard.drawing;

import java.util.List;

/** A straight stroke. */
public record Line(Layer layer, Point from, Point to) implements Entity {

    @Override
    public Box bounds() {
        return Box.around(List.of(from, to));
    }

    @Override
    public Line movedBy(double dx, double dy) {
        return new Line(layer, from.movedBy(dx, dy), to.movedBy(dx, dy));
    }

    @Override
    public void drawOn(Canvas canvas) {
        canvas.line(this);
    }
}
