package org.garboard.drawing;

import java.util.List;

/**
 * Parallel strokes over a region.
 *
 * @param rings closed rings of corners, last not repeated; the first is the outline, the rest
 *     are holes in it
 * @param angleDeg of the strokes
 * @param spacing between them [mm on paper]
 */
public record Hatch(Layer layer, List<List<Point>> rings, double angleDeg, double spacing) implements Entity {
    public Hatch {
        rings = rings.stream().map(List::copyOf).toList();
        if (rings.isEmpty() || rings.stream().anyMatch(ring -> ring.size() < 3)) {
            throw new IllegalArgumentException("a hatch needs rings of three corners or more");
        }
        if (!(spacing > 0)) {
            throw new IllegalArgumentException("hatch strokes lie apart, not " + spacing + " mm");
        }
    }

    @Override
    public Box bounds() {
        return Box.around(rings.get(0));
    }

    @Override
    public Hatch movedBy(double dx, double dy) {
        return new Hatch(layer, rings.stream().map(ring -> ring.stream()
                .map(point -> point.movedBy(dx, dy)).toList()).toList(), angleDeg, spacing);
    }

    @Override
    public void drawOn(Canvas canvas) {
        canvas.hatch(this);
    }
}
