package org.garboard.drawing.template;

import java.util.ArrayList;
import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;

/** Rulers of 100 mm and 4 inches, level and upright: printers can differ between the two. */
final class Rulers {
    private static final double INCH = 25.4;
    private static final double LETTERS = 2.5;

    private Rulers() {
    }

    /** Level ones over each other from a point, upright ones beside each other from another. */
    static List<Entity> of(Point level, Point upright) {
        List<Entity> drawn = new ArrayList<>();
        ruler(level, 0, 100, 10, "100 mm", drawn);
        ruler(level.movedBy(0, -6), 0, 4 * INCH, INCH, "4 in", drawn);
        ruler(upright, 90, 100, 10, "100 mm", drawn);
        ruler(upright.movedBy(7, 0), 90, 4 * INCH, INCH, "4 in", drawn);
        return drawn;
    }

    private static void ruler(Point start, double direction, double length, double division, String words, List<Entity> drawn) {
        drawn.add(new Line(Layer.SCALE_CHECK, start, start.towards(direction, length)));
        int divisions = (int) Math.round(length / division);
        for (int i = 0; i <= divisions; i++) {
            Point at = start.towards(direction, length * i / divisions);
            double tick = i == 0 || i == divisions ? 3 : 1.5;
            drawn.add(new Line(Layer.SCALE_CHECK, at, at.towards(direction - 90, tick)));
        }
        Point beyond = start.towards(direction, length + 2).towards(direction - 90, 1.2);
        drawn.add(new Text(Layer.SCALE_CHECK, words, beyond.towards(direction - 90, LETTERS / 2), LETTERS, Anchor.LEFT, direction));
    }
}
