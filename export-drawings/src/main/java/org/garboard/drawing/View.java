package org.garboard.drawing;

import java.util.List;

/**
 * One view of the thing drawn, with its own frame on the sheet, at the sheet's scale.
 *
 * @param name what it is called and how it is seen: "BOTTOM PLAN, SEEN FROM BELOW"
 * @param frame that everything in it stays inside
 */
public record View(String name, Box frame, List<Entity> entities) {
    public View {
        entities = List.copyOf(entities);
    }

    /** A view whose frame is the least box round what it shows. */
    public static View around(String name, List<Entity> entities) {
        Box frame = entities.stream().map(Entity::bounds).reduce(Box::joinedWith).orElseThrow(
                () -> new IllegalArgumentException("view \"" + name + "\" shows nothing"));
        return new View(name, frame, entities);
    }

    public View movedBy(double dx, double dy) {
        return new View(name, frame.movedBy(dx, dy),
                entities.stream().map(entity -> entity.movedBy(dx, dy)).toList());
    }
}
