package org.garboard.drawing.worksheet;

import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;

/** The empty list, with the columns of the file. */
final class PointList {
    private static final double PITCH = 7;

    /** A column: its word in the file, what is written there, its width [mm]. */
    private record Column(String word, String hint, double width) {
    }

    private static final List<Column> COLUMNS = List.of(
            new Column("Station", "name", 20), new Column("Distance", "from datum", 26),
            new Column("Side", "port, starboard", 28), new Column("Mark", "keel, chine, edge, float…", 42),
            new Column("Out", "from the line", 24), new Column("Height", "from the level", 24), new Column("Notes", "", 18));

    private PointList() {
    }

    /** From so high [mm] down to the margin. */
    static void draw(List<Entity> entities, double top) {
        double left = Worksheet.MARGIN;
        double bottom = top - 10 - PITCH * Math.floor((top - 10 - Worksheet.MARGIN) / PITCH);
        double x = left;
        for (Column column : COLUMNS) {
            entities.add(Text.level(Layer.TEXT, column.word(), new Point(x + 1.5, top - 4.5), Worksheet.LETTERS, Anchor.LEFT));
            if (!column.hint().isEmpty()) {
                entities.add(Text.level(Layer.TEXT, column.hint(), new Point(x + 1.5, top - 8.5), 1.8, Anchor.LEFT));
            }
            entities.add(new Line(Layer.GRID, new Point(x, top), new Point(x, bottom)));
            x += column.width();
        }
        entities.add(new Line(Layer.GRID, new Point(x, top), new Point(x, bottom)));
        entities.add(new Line(Layer.FORM, new Point(left, top), new Point(x, top)));
        entities.add(new Line(Layer.FORM, new Point(left, top - 10), new Point(x, top - 10)));
        for (double y = top - 10 - PITCH; y > bottom - 1e-9; y -= PITCH) {
            entities.add(new Line(Layer.GRID, new Point(left, y), new Point(x, y)));
        }
        entities.add(new Line(Layer.GRID, new Point(left, bottom), new Point(x, bottom)));
    }
}
