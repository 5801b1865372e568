package org.garboard.drawing.worksheet;

import java.util.List;
import org.garboard.drawing.Anchor;
import org.garboard.drawing.Entity;
import org.garboard.drawing.Layer;
import org.garboard.drawing.Line;
import org.garboard.drawing.Point;
import org.garboard.drawing.Polyline;
import org.garboard.drawing.Solid;
import org.garboard.drawing.Text;

/** A boat that stands trimmed over a level line, from starboard, bow right: stations, datum, float marks. Not to scale. */
final class ProfileSketch {
    private static final double TRIM_DEG = 2;
    private static final double LETTERS = 2.5;
    private static final double[] STATIONS = {40, 75, 110};

    private final List<Entity> entities;
    private final Point datum;

    private ProfileSketch(List<Entity> entities, Point datum) {
        this.entities = entities;
        this.datum = datum;
    }

    /** @param datum where the datum is plumbed down to the line */
    static void draw(List<Entity> entities, Point datum) {
        new ProfileSketch(entities, datum).draw();
    }

    private void draw() {
        words("FROM STARBOARD (bow right)", datum.movedBy(-10, 39), Anchor.LEFT);
        entities.add(Polyline.closed(Layer.HULL, List.of(own(0, 0), own(120, 0), own(138, 6), own(150, 24), own(156, 30), own(-4, 24))));
        entities.add(new Line(Layer.HIDDEN, own(-1, 9), own(141, 9)));
        words("waterline", own(96, 10.2), Anchor.MIDDLE);
        for (double x : new double[] {12, 132}) {
            Point mark = own(x, 9);
            entities.add(new Solid(Layer.MARK, List.of(mark, mark.movedBy(-1.5, 3), mark.movedBy(1.5, 3))));
            words("float mark", mark.movedBy(0, 4.2), Anchor.MIDDLE);
        }
        entities.add(new Line(Layer.FORM, datum.movedBy(-10, 0), datum.movedBy(162, 0)));
        words("stretched line, level", datum.movedBy(162, 1.5), Anchor.RIGHT);
        plumb(0, "datum");
        for (int i = 0; i < STATIONS.length; i++) {
            plumb(STATIONS[i], "station " + (char) ('A' + STATIONS.length - 1 - i));
        }
        double y = datum.y() - 9;
        entities.add(new Line(Layer.DIM, datum.movedBy(0, -9), datum.movedBy(STATIONS[0], -9)));
        entities.add(Solid.arrow(Layer.DIM, new Point(datum.x() + STATIONS[0], y), 0, 2.5));
        entities.add(Solid.arrow(Layer.DIM, new Point(datum.x(), y), 180, 2.5));
        words("Distance", new Point(datum.x() + STATIONS[0] / 2, y + 1.2), Anchor.MIDDLE);
    }

    private Point own(double forward, double up) {
        double trim = Math.toRadians(TRIM_DEG);
        return datum.movedBy(forward * Math.cos(trim) - up * Math.sin(trim), 6 + up * Math.cos(trim) + forward * Math.sin(trim));
    }

    /** Stations are plumb, whatever the trim. */
    private void plumb(double at, String name) {
        Point foot = datum.movedBy(at, -10.5);
        entities.add(new Line(at == 0 ? Layer.GRID : Layer.CENTRE, foot, datum.movedBy(at, at == 0 ? 6 : 34)));
        words(name, datum.movedBy(at + 1.5, -4), Anchor.LEFT);
    }

    private void words(String words, Point at, Anchor anchor) {
        entities.add(Text.level(Layer.TEXT, words, at, LETTERS, anchor));
    }
}
