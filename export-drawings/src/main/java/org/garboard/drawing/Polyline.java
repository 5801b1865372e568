package org.garboard.drawing;

import java.util.List;

/** Straight runs and arcs joined end to end. */
public record Polyline(Layer layer, Run run, List<Vertex> vertices) implements Entity {

    /** Whether the last corner joins the first. */
    public enum Run { OPEN, CLOSED }

    public Polyline {
        vertices = List.copyOf(vertices);
        if (vertices.size() < 2) {
            throw new IllegalArgumentException("a polyline has two corners or more, not " + vertices.size());
        }
    }

    public static Polyline open(Layer layer, List<Point> points) {
        return new Polyline(layer, Run.OPEN, points.stream().map(Vertex::corner).toList());
    }

    public static Polyline closed(Layer layer, List<Point> points) {
        return new Polyline(layer, Run.CLOSED, points.stream().map(Vertex::corner).toList());
    }

    /** Number of runs between corners. */
    public int runs() {
        return run == Run.CLOSED ? vertices.size() : vertices.size() - 1;
    }

    /** Where a run ends. */
    public Point end(int index) {
        return vertices.get((index + 1) % vertices.size()).at();
    }

    /**
     * A curved run as an arc. With chord c and bulge b the radius is c (1 + b^2) / (4 |b|), and the
     * centre lies c (1 - b^2) / (4 b) to the left of the chord's middle.
     */
    public Arc arc(int index) {
        Point from = vertices.get(index).at();
        Point to = end(index);
        double bulge = vertices.get(index).bulge();
        double chord = from.distanceTo(to);
        double radius = chord * (1 + bulge * bulge) / (4 * Math.abs(bulge));
        Point centre = from.midwayTo(to).towards(from.directionTo(to) + 90,
                chord * (1 - bulge * bulge) / (4 * bulge));
        return bulge > 0
                ? new Arc(layer, centre, radius, centre.directionTo(from), centre.directionTo(to))
                : new Arc(layer, centre, radius, centre.directionTo(to), centre.directionTo(from));
    }

    @Override
    public Box bounds() {
        Box box = Box.around(vertices.stream().map(Vertex::at).toList());
        for (int index = 0; index < runs(); index++) {
            if (!vertices.get(index).straight()) {
                box = box.joinedWith(arc(index).bounds());
            }
        }
        return box;
    }

    @Override
    public Polyline movedBy(double dx, double dy) {
        return new Polyline(layer, run, vertices.stream()
                .map(vertex -> new Vertex(vertex.at().movedBy(dx, dy), vertex.bulge())).toList());
    }

    @Override
    public void drawOn(Canvas canvas) {
        canvas.polyline(this);
    }
}
