package org.garboard.drawing.layout;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;

/** Names in a column beside a view, each as near as may be to the end of what it names, and a line to it. */
public final class NameColumn {
    /** Between line and name [mm]. */
    private static final double CLEAR = 1;
    private static final double PITCH = 1.5;
    /** Where nothing stands below the column. */
    public static final double NO_FLOOR = Double.NEGATIVE_INFINITY;

    /**
     * One name.
     *
     * @param end where what is named ends
     */
    public record Name(String words, Point end) {
    }

    private NameColumn() {
    }

    /** Names that end at x, none lower than a floor [mm]. */
    public static List<Entity> leftOf(double x, double floor, List<Name> names, double height) {
        return column(x, floor, names, height, Anchor.RIGHT);
    }

    /** Names that begin at x, none lower than a floor [mm]. */
    public static List<Entity> rightOf(double x, double floor, List<Name> names, double height) {
        return column(x, floor, names, height, Anchor.LEFT);
    }

    private static List<Entity> column(double x, double floor, List<Name> names, double height, Anchor anchor) {
        double away = anchor == Anchor.LEFT ? -CLEAR : CLEAR;
        double[] spread = Spread.apart(names.stream().mapToDouble(name -> name.end().y()).toArray(), PITCH * height,
                floor + height);
        List<Entity> column = new ArrayList<>();
        for (int i = 0; i < spread.length; i++) {
            Point end = names.get(i).end();
            Point at = new Point(x + away, spread[i]);
            if (end.distanceTo(at) > 0.2) {
                column.add(new Line(Layer.DIM, end, at));
            }
            column.add(Text.level(Layer.TEXT, names.get(i).words(), new Point(x, spread[i] - height / 2), height, anchor));
        }
        return column;
    }
}
