package org.garboard.drawing.worksheet;

import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;

/** The heading rows of a take-off, each with its cells to fill in or to choose from. */
final class HeadingFields {
    private static final double PITCH = 7.5;
    private static final double KEYS = 32;

    /** First cell of the row, and what is said of the cells behind it. */
    private record Field(String key, String wanted) {
    }

    private static final List<Field> FIELDS = List.of(
            new Field("TAKE-OFF", "boat:"),
            new Field("Units", "mm  |  cm  |  m  |  feet-inches-eighths        next cell:  to outside of skin"),
            new Field("Datum", "place on the boat:                                                   its height:"),
            new Field("Distances", "forward of datum  |  aft of datum"),
            new Field("Heights", "up from level  |  down from level"),
            new Field("Trim from", "float marks   waterline:                                 height above base:"),
            new Field("   or", "straight keel   from station:                           to station:"),
            new Field("Covers", "to the stem  |  to the transom  (only where a station stands there)"),
            new Field("Notes", "by:                                                  date:"));

    private HeadingFields() {
    }

    /** Returns where the next thing begins [mm up the page]. */
    static double draw(List<Entity> entities, double top) {
        double y = top;
        for (Field field : FIELDS) {
            y -= PITCH;
            entities.add(Text.level(Layer.TEXT, field.key().strip(), new Point(Worksheet.MARGIN + (field.key().startsWith(" ") ? 8 : 1), y + 2.2),
                    Worksheet.LETTERS, Anchor.LEFT));
            parts(entities, field.wanted(), y + 2.2);
            entities.add(new Line(Layer.GRID, new Point(Worksheet.MARGIN, y), new Point(Worksheet.WIDTH - Worksheet.MARGIN, y)));
        }
        entities.add(new Line(Layer.GRID, new Point(Worksheet.MARGIN + KEYS, top), new Point(Worksheet.MARGIN + KEYS, y)));
        return y - 5;
    }

    /** What stands wide apart is a second cell, half-way along. */
    private static void parts(List<Entity> entities, String wanted, double y) {
        String[] parts = wanted.split(" {5,}");
        for (int i = 0; i < parts.length; i++) {
            double x = Worksheet.MARGIN + KEYS + 2 + i * (Worksheet.WIDTH - 2 * Worksheet.MARGIN - KEYS) * 0.6;
            entities.add(Text.level(Layer.TEXT, parts[i], new Point(x, y), 2.2, Anchor.LEFT));
        }
    }
}
