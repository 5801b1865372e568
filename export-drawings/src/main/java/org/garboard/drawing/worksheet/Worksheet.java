package org.garboard.drawing.worksheet;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Scale;
import org.garboard.drawing.Sheet;
import org.garboard.drawing.Text;

/** The worksheet's pages: as wide as A4 and as high as Letter, so that both print them at full size (our choice). */
public final class Worksheet {
    static final double WIDTH = 210;
    static final double HEIGHT = 279.4;
    /** No printer needs more [mm]; our choice. */
    static final double MARGIN = 14;
    static final double LETTERS = 2.5;

    private static final int LIST_PAGES = 2;
    private static final String TITLE = "Take-off worksheet";

    private Worksheet() {
    }

    /** How to measure; the headings with the first points; more points. */
    public static List<Sheet> pages() {
        List<Sheet> pages = new ArrayList<>();
        pages.add(page(1, MeasuringGuide.entities()));
        for (int list = 0; list < LIST_PAGES; list++) {
            List<Entity> entities = new ArrayList<>();
            double top = HEIGHT - MARGIN - 12;
            if (list == 0) {
                top = HeadingFields.draw(entities, top);
            }
            PointList.draw(entities, top);
            pages.add(page(2 + list, entities));
        }
        return pages;
    }

    private static Sheet page(int number, List<Entity> entities) {
        List<Entity> all = new ArrayList<>(entities);
        double top = HEIGHT - MARGIN - 5;
        all.add(Text.level(Layer.TITLE, "TAKE-OFF WORKSHEET", new Point(MARGIN, top), 5, Anchor.LEFT));
        all.add(Text.level(Layer.TEXT, "Page " + number + " of " + (1 + LIST_PAGES) + (number > 1 ? "; copy as many as are needed" : ""),
                new Point(WIDTH - MARGIN, top), LETTERS, Anchor.RIGHT));
        all.add(new Line(Layer.BORDER, new Point(MARGIN, top - 3), new Point(WIDTH - MARGIN, top - 3)));
        all.add(Text.level(Layer.TEXT, "A4 or Letter, at full size. Type the rows into a spreadsheet as they stand here and save it as .xlsx, or as CSV.",
                new Point(MARGIN, MARGIN - 4), 2, Anchor.LEFT));
        return new Sheet(TITLE, "How to take the shape of a boat off in the yard with a level and a tape, and a list to fill in",
                WIDTH, HEIGHT, new Scale(1), LETTERS, List.of(), all);
    }
}
