package org.garboard.drawing.layout;

import java.util.List;
import java.util.Optional;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Flattened;
import org.garboard.drawing.Ink;
import org.garboard.drawing.Text;
import org.garboard.drawing.View;

/** Picks a place for something at which no words lie on lines, its own as little as those drawn before. */
public final class ClearPlace {

    private ClearPlace() {
    }

    /**
     * The first of several places that is clear of all that is drawn; the first of all where none is.
     *
     * @param places each as what is drawn there
     */
    public static List<Entity> among(List<List<Entity>> places, List<Entity> drawn) {
        return clearAmong(places, drawn).orElse(places.get(0));
    }

    /** The first of several places that is clear of all that is drawn, if any is. */
    public static Optional<List<Entity>> clearAmong(List<List<Entity>> places, List<Entity> drawn) {
        List<Entity> before = plain(drawn);
        return places.stream().filter(place -> clear(plain(place), before) && clear(before, plain(place))).findFirst();
    }

    private static List<Entity> plain(List<Entity> entities) {
        return entities.isEmpty() ? List.of() : Flattened.of(View.around("plain", entities)).all();
    }

    /** Whether the texts of some are clear of the ink of others. */
    private static boolean clear(List<Entity> texts, List<Entity> others) {
        return texts.stream().filter(Text.class::isInstance).map(Text.class::cast)
                .noneMatch(text -> others.stream().flatMap(other -> Ink.of(other).stream())
                        .anyMatch(figure -> Ink.meets(text.corners(), figure)));
    }
}
