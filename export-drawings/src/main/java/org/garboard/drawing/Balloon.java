package org.garboard.drawing;

import java.util.ArrayList;
import java.util.List;

/**
 * A number or letter in a circle, and leaders to the places it names.
 *
 * @param centre of the circle
 * @param mark number or letter
 * @param height of its lettering [mm]
 * @param targets places on a surface, each met by a leader with a dot; may be none
 */
public record Balloon(Point centre, String mark, double height, List<Point> targets) implements Entity {

    public Balloon {
        targets = List.copyOf(targets);
    }

    /** Radius beside lettering of a height [mm]: a circle of 10 mm for letters of 3.5. */
    public static double radius(double height) {
        return 5 / 3.5 * height;
    }

    private List<Entity> parts() {
        double radius = radius(height);
        List<Entity> parts = new ArrayList<>();
        parts.add(new Circle(Layer.DIM, centre, radius));
        parts.add(Text.centred(Layer.DIM, mark, centre, height, 0));
        for (Point target : targets) {
            Point edge = centre.towards(centre.directionTo(target), radius);
            parts.add(new Leader(Layer.DIM, Leader.End.DOT, List.of(target, edge)));
        }
        return parts;
    }

    @Override
    public Box bounds() {
        return parts().stream().map(Entity::bounds).reduce(Box::joinedWith).orElseThrow();
    }

    @Override
    public Balloon movedBy(double dx, double dy) {
        return new Balloon(centre.movedBy(dx, dy), mark, height,
                targets.stream().map(target -> target.movedBy(dx, dy)).toList());
    }

    @Override
    public void drawOn(Canvas canvas) {
        parts().forEach(part -> part.drawOn(canvas));
    }
}
