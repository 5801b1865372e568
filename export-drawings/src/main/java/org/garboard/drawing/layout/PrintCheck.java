package org.garboard.drawing.layout;

import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Text;

/** A bar of 100 mm on the paper, to prove that a print came out at its size; left end at the origin. */
final class PrintCheck {

    private static final double LENGTH = 100;
    private static final double TICK = 3;
    private static final double LETTERS = 2.5;

    private PrintCheck() {
    }

    static List<Entity> bar() {
        return List.of(
                new Line(Layer.SCALE_CHECK, new Point(0, 0), new Point(LENGTH, 0)),
                new Line(Layer.SCALE_CHECK, new Point(0, 0), new Point(0, TICK)),
                new Line(Layer.SCALE_CHECK, new Point(LENGTH / 2, 0), new Point(LENGTH / 2, TICK / 2)),
                new Line(Layer.SCALE_CHECK, new Point(LENGTH, 0), new Point(LENGTH, TICK)),
                Text.level(Layer.SCALE_CHECK, "100 mm on paper", new Point(1.5, 1.3), LETTERS, Anchor.LEFT),
                Text.level(Layer.SCALE_CHECK, "DO NOT SCALE - use figures", new Point(LENGTH + 4, 0.4), LETTERS, Anchor.LEFT));
    }
}
