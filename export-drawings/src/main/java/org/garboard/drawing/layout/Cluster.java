package org.garboard.drawing.layout;

import java.util.List;
import java.util.stream.Stream;
import org.garboard.drawing.Box;
import org.garboard.drawing.Entity;
import org.garboard.drawing.View;

/**
 * Views and loose entities that keep their place to each other and are set on the sheet as one.
 *
 * @param views each in its frame
 * @param loose entities outside any view
 * @param bounds the room it claims, everything inside
 */
public record Cluster(List<View> views, List<Entity> loose, Box bounds) {
    public Cluster {
        views = List.copyOf(views);
        loose = List.copyOf(loose);
    }

    public static Cluster of(View... views) {
        return new Cluster(List.of(views), List.of(),
                Stream.of(views).map(View::frame).reduce(Box::joinedWith).orElseThrow());
    }

    public static Cluster of(List<Entity> loose) {
        return new Cluster(List.of(), loose, bounds(loose));
    }

    /** Entities in a column that claims its whole width [mm] from x = 0, so that columns line up. */
    static Cluster column(List<Entity> loose, double width) {
        Box used = bounds(loose);
        return new Cluster(List.of(), loose, used.joinedWith(new Box(0, used.bottom(), width, used.top())));
    }

    private static Box bounds(List<Entity> entities) {
        return entities.stream().map(Entity::bounds).reduce(Box::joinedWith).orElseThrow();
    }

    public Cluster movedBy(double dx, double dy) {
        return new Cluster(views.stream().map(view -> view.movedBy(dx, dy)).toList(),
                loose.stream().map(entity -> entity.movedBy(dx, dy)).toList(), bounds.movedBy(dx, dy));
    }
}
