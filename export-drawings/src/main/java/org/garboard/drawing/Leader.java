package org.garboard.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A line that points from words to what they are about.
 *
 * @param end dot on a surface, arrow on an edge (ISO 128-2)
 * @param path from the pointed end to the words
 */
public record Leader(Layer layer, End end, List<Point> path) implements Entity {

    /** What stands at the pointed end. */
    public enum End { ARROW, DOT }

    private static final double ARROW = 2.5;
    private static final double DOT_RADIUS = 0.6;

    public Leader {
        path = List.copyOf(path);
        if (path.size() < 2) {
            throw new IllegalArgumentException("a leader runs between two points or more, not " + path.size());
        }
    }

    private List<Entity> parts() {
        List<Entity> parts = new ArrayList<>();
        for (int i = 1; i < path.size(); i++) {
            parts.add(new Line(layer, path.get(i - 1), path.get(i)));
        }
        Point tip = path.get(0);
        if (end == End.ARROW) {
            parts.add(Solid.arrow(layer, tip, path.get(1).directionTo(tip), ARROW));
        } else {
            parts.add(new Circle(layer, tip, DOT_RADIUS));
            parts.add(new Solid(layer, List.of(tip.towards(0, DOT_RADIUS), tip.towards(90, DOT_RADIUS),
                    tip.towards(180, DOT_RADIUS), tip.towards(270, DOT_RADIUS))));
        }
        return parts;
    }

    @Override
    public Box bounds() {
        return parts().stream().map(Entity::bounds).reduce(Box::joinedWith).orElseThrow();
    }

    @Override
    public Leader movedBy(double dx, double dy) {
        return new Leader(layer, end, path.stream().map(point -> point.movedBy(dx, dy)).toList());
    }

    @Override
    public void drawOn(Canvas canvas) {
        parts().forEach(part -> part.drawOn(canvas));
    }
}
