package org.garboard.drawing;

import java.util.List;
import java.util.stream.Stream;

/**
 * A sheet ready to be written: everything on it has its place.
 *
 * @param title in one line, for the file's own heading
 * @param description what it shows, from which side, at which scale
 * @param width of the trimmed paper [mm]
 * @param height of the trimmed paper [mm]
 * @param scale the one scale of all its views
 * @param lettering height of all its dimensions [mm]
 * @param views each in its frame
 * @param furniture frame, title block, notes and tables, everything that has no scale
 */
public record Sheet(String title, String description, double width, double height, Scale scale,
                    double lettering, List<View> views, List<Entity> furniture) {
    public Sheet {
        views = List.copyOf(views);
        furniture = List.copyOf(furniture);
        for (View view : views) {
            for (Entity entity : view.entities()) {
                if (entity instanceof Dimension dimension) {
                    DimensionWords.requireTrue(dimension, scale);
                    requireOneLettering(dimension, lettering);
                }
            }
        }
    }

    private static void requireOneLettering(Dimension dimension, double lettering) {
        if (dimension.height() != lettering) {
            throw new IllegalArgumentException("dimension \"" + dimension.words() + "\" is lettered "
                    + dimension.height() + " mm high on a sheet of " + lettering + " mm");
        }
    }

    /** Everything drawn, views first. */
    public Stream<Entity> entities() {
        return Stream.concat(views.stream().flatMap(view -> view.entities().stream()), furniture.stream());
    }

    public void drawOn(Canvas canvas) {
        entities().forEach(entity -> entity.drawOn(canvas));
    }
}
