package org.garboard.drawing.worksheet;

import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Circle;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Solid;
import org.garboard.drawing.Text;

/** One station of a boat that stands heeled over a level line: what Out and Height are. Not to scale. */
final class SectionSketch {
    private static final double HEEL_DEG = 5;
    private static final double LETTERS = 2.5;
    private static final double ARROW = 2.5;

    private final List<Entity> entities;
    private final Point line;

    private SectionSketch(List<Entity> entities, Point line) {
        this.entities = entities;
        this.line = line;
    }

    /** @param line where the stretched line is cut */
    static void draw(List<Entity> entities, Point line) {
        new SectionSketch(entities, line).draw();
    }

    private void draw() {
        words("A STATION, LOOKING FORWARD (starboard right)", line.movedBy(-91, 60), Anchor.LEFT);
        entities.add(Polyline.open(Layer.HULL, List.of(own(-56, 35), own(-52, 20), own(0, 0), own(52, 20), own(56, 35))));
        entities.add(new Line(Layer.CENTRE, own(0, -4), own(0, 40)));
        block(own(-17, 6.5));
        block(own(17, 6.5));
        entities.add(new Line(Layer.FORM, line.movedBy(-82, 0), line.movedBy(82, 0)));
        words("level", line.movedBy(-82, 1.5), Anchor.LEFT);
        entities.add(new Circle(Layer.HULL, line, 1.2));
        words("stretched line, end on", line.movedBy(-3, -15), Anchor.RIGHT);
        bob(own(52, 20));
        bob(own(-52, 20));
        bob(own(34, 13));
        outAndHeight();
        point(own(0, 0), "keel", 3, -4.5, Anchor.LEFT);
        point(own(34, 13), "P1", 1, 2.5, Anchor.MIDDLE);
        point(own(-34, 13), "P1", -1, 2.5, Anchor.MIDDLE);
        point(own(52, 20), "chine", -3, 2, Anchor.RIGHT);
        point(own(-52, 20), "chine", -3, -1, Anchor.RIGHT);
        point(own(56, 35), "edge, or sheer", 3, -1, Anchor.LEFT);
        point(own(-56, 35), "edge, or sheer", -3, -1, Anchor.RIGHT);
        words("same mark on both sides = a pair", line.movedBy(4, 40), Anchor.MIDDLE);
    }

    /** A place of the boat, heeled. */
    private Point own(double y, double z) {
        double heel = Math.toRadians(HEEL_DEG);
        return line.movedBy(2 + y * Math.cos(heel) + z * Math.sin(heel), 14 + z * Math.cos(heel) - y * Math.sin(heel));
    }

    private void block(Point under) {
        entities.add(Polyline.closed(Layer.ADJACENT, List.of(under.movedBy(-5, 0), under.movedBy(5, 0),
                new Point(under.x() + 5, line.y() - 10), new Point(under.x() - 5, line.y() - 10))));
    }

    private void bob(Point from) {
        Point tip = new Point(from.x(), line.y() - 3);
        entities.add(new Line(Layer.GRID, from, tip));
        entities.add(new Solid(Layer.DIM, List.of(tip.movedBy(-1.2, 2.5), tip.movedBy(1.2, 2.5), tip.movedBy(0, -1.5))));
    }

    private void outAndHeight() {
        Point chine = own(52, 20);
        double y = line.y() - 14;
        entities.add(new Line(Layer.GRID, line, new Point(line.x(), y - 2)));
        entities.add(new Line(Layer.GRID, new Point(chine.x(), line.y() - 3), new Point(chine.x(), y - 2)));
        arrows(new Point(line.x(), y), new Point(chine.x(), y));
        words("Out", new Point((line.x() + chine.x()) / 2, y + 1.2), Anchor.MIDDLE);
        double x = chine.x() + 14;
        entities.add(new Line(Layer.GRID, chine, new Point(x + 2, chine.y())));
        arrows(new Point(x, line.y()), new Point(x, chine.y()));
        words("Height", new Point(x + 2, line.y() + 8), Anchor.LEFT);
    }

    private void arrows(Point from, Point to) {
        entities.add(new Line(Layer.DIM, from, to));
        entities.add(Solid.arrow(Layer.DIM, to, from.directionTo(to), ARROW));
        entities.add(Solid.arrow(Layer.DIM, from, to.directionTo(from), ARROW));
    }

    private void point(Point at, String name, double dx, double dy, Anchor anchor) {
        entities.add(new Circle(Layer.HULL, at, 0.9));
        words(name, at.movedBy(dx, dy), anchor);
    }

    private void words(String words, Point at, Anchor anchor) {
        entities.add(Text.level(Layer.TEXT, words, at, LETTERS, anchor));
    }
}
