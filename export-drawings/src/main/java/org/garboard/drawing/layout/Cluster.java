package org.garboard.drawing.layout;

import java.util.ArrayList;
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

    /** One view over another, lengths in line, so far apart [mm]. */
    public static Cluster inLine(View upper, View lower, double gap) {
        return of(upper.movedBy(0, lower.frame().top() + gap - upper.frame().bottom()), lower);
    }

    /** Views side by side, their levels in line, so far apart [mm]. */
    public static Cluster row(List<View> views, double gap) {
        List<View> row = new ArrayList<>();
        double left = 0;
        for (View view : views) {
            row.add(view.movedBy(left - view.frame().left(), 0));
            left += view.frame().width() + gap;
        }
        return of(row.toArray(View[]::new));
    }

    /** Views one under another, their left sides in line, so far apart [mm]. */
    public static Cluster stack(List<View> views, double gap) {
        List<View> stack = new ArrayList<>();
        double top = 0;
        for (View view : views) {
            stack.add(view.movedBy(-view.frame().left(), top - view.frame().top()));
            top -= view.frame().height() + gap;
        }
        return of(stack.toArray(View[]::new));
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
